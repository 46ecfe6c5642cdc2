/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

/**
 * The delay of a stream whose controller sends the most urgent message first: the exact analysis of Davis, Burns, Bril,
 * Lukkien, "Controller Area Network (CAN) schedulability analysis: refuted, revisited and revised", Real-Time Systems 35,
 * 2007. The equations are from memory and agree with its worked example.
 *
 * <p>A stream may have several frames that come together and share an identifier, so they go in their order. The paper's
 * argument then holds for each frame: with all that may precede it released together, one bit after the longest other frame
 * has started, frame number {@code k} of the busy period starts after {@code B + k·C} and what came in between. In each burst
 * the last frame waits longest.
 *
 * <p>If a device spaces the frames of a burst, the bound of others still holds: each frame is then a stream of its own with
 * the interval of the message, and together they ask for no more than the bursts do.
 */
final class PriorityQueue {

	private PriorityQueue() {
	}

	/**
	 * The delay of a stream.
	 *
	 * @param stream the stream
	 * @param kind which interval and jitter in the demand are its own
	 * @param demand what the stream and all that may precede it ask for; changed and changed back
	 * @param blocking the longest frame that cannot precede it
	 * @param longest the longest frame of the demand
	 */
	static Delay delay(FrameStream stream, int kind, Demand demand, int blocking, int longest, BusTerms terms) {
		BusyWindow all = new BusyWindow(terms, demand, longest);
		long busyPeriod = all.untilAllIsDone(blocking);
		if (busyPeriod == BusyWindow.NONE) {
			return new Delay.Unbounded(all.reason());
		}
		demand.add(kind, -stream.burstBits());
		try {
			return longest(stream, new BusyWindow(terms, demand, longest), blocking, busyPeriod);
		} finally {
			demand.add(kind, stream.burstBits());
		}
	}

	private static Delay longest(FrameStream stream, BusyWindow others, int blocking, long busyPeriod) {
		long instances = (busyPeriod + stream.jitter() - 1) / stream.interval() + 1;
		long worst = 0;
		long worstInstance = 0;
		long wait = 0;
		for (long instance = 0; instance < instances; instance++) {
			long before = blocking + (instance + 1) * stream.burstBits() - stream.frameBits();
			wait = others.before(before, wait, stream.frameBits());
			if (wait == BusyWindow.NONE) {
				return new Delay.Unbounded(others.reason());
			}
			long delay = stream.jitter() + wait - instance * stream.interval() + stream.frameBits();
			if (delay > worst) {
				worst = delay;
				worstInstance = instance;
			}
		}
		return new Delay.Bounded(worst, worstInstance, busyPeriod);
	}
}
