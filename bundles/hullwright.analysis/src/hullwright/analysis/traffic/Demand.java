/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

/**
 * The bits that streams ask for, added up over all streams with the same interval and jitter: a boat has many messages and few
 * intervals. Times are in bits.
 */
final class Demand {

	private final long[] intervals;
	private final long[] jitters;
	private final long[] bits;

	private Demand(long[] intervals, long[] jitters, long[] bits) {
		this.intervals = intervals;
		this.jitters = jitters;
		this.bits = bits;
	}

	/** Nothing is asked for yet. */
	static Demand of(long[] intervals, long[] jitters) {
		return new Demand(intervals, jitters, new long[intervals.length]);
	}

	Demand copy() {
		return new Demand(intervals, jitters, bits.clone());
	}

	/** Adds a burst to what streams with this interval and jitter ask for, or takes it away if negative. */
	void add(int kind, long burst) {
		bits[kind] += burst;
	}

	/**
	 * The bits that come within a window at most, before its end: each stream as late as its jitter allows at its start and
	 * then as early as it can. No more than the limit and a bit is told.
	 */
	long within(long window, long limit) {
		long sum = 0;
		for (int kind = 0; kind < bits.length; kind++) {
			if (bits[kind] == 0) {
				continue;
			}
			long times = (window + jitters[kind] - 1) / intervals[kind] + 1;
			if (jitters[kind] > limit || times > limit / bits[kind]) {
				return limit + 1;
			}
			sum += times * bits[kind];
		}
		return Math.min(sum, limit + 1);
	}

	/** The part of the bus that is asked for in the long run. */
	double share() {
		double share = 0;
		for (int kind = 0; kind < bits.length; kind++) {
			share += bits[kind] / (double) intervals[kind];
		}
		return share;
	}

	/** The bits that jitter lets come at once on top of that, in the long run. */
	double ahead() {
		double ahead = 0;
		for (int kind = 0; kind < bits.length; kind++) {
			ahead += bits[kind] * (jitters[kind] / (double) intervals[kind]);
		}
		return ahead;
	}
}
