/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

/**
 * Finds how long a frame waits: the shortest window in which all that comes before it gets done.
 */
final class BusyWindow {

	/** There is no such window within the horizon. */
	static final long NONE = -1;

	/** A bus with no more left than this is full; less is rounding. */
	private static final double FULL = 1e-12;

	private final BusTerms terms;
	private final Demand demand;
	private final int longest;
	private final double free;
	private final double ahead;

	/**
	 * @param terms the assumptions
	 * @param demand what comes in as time goes by
	 * @param longest the longest frame that an error may spoil
	 */
	BusyWindow(BusTerms terms, Demand demand, int longest) {
		this.terms = terms;
		this.demand = demand;
		this.longest = longest;
		this.free = 1 - demand.share() - terms.errorShare(longest);
		this.ahead = demand.ahead();
	}

	/**
	 * The shortest window after which a frame can start. What comes in one bit before the end still goes first.
	 *
	 * @param fixed what has to be done anyway
	 * @param atLeast a window that is known not to be too long
	 * @param own the frame itself, which an error may spoil
	 * @return its length, or {@link #NONE}
	 */
	long before(long fixed, long atLeast, int own) {
		return shortest(fixed, atLeast, own, 1);
	}

	/**
	 * The shortest window at whose end nothing is left to do.
	 *
	 * @param fixed what has to be done anyway
	 * @param atLeast a window that is known not to be too long, at least one bit
	 * @return its length, or {@link #NONE}
	 */
	long untilAllIsDone(long fixed, long atLeast) {
		return shortest(fixed, atLeast, 0, 0);
	}

	/** Whether nothing is left of the bus. */
	boolean isFull() {
		return free <= FULL;
	}

	/** Why there is no window. */
	ResponseTime.Reason reason() {
		return isFull() ? ResponseTime.Reason.OVERLOADED : ResponseTime.Reason.BEYOND_HORIZON;
	}

	private long shortest(long fixed, long atLeast, int own, int late) {
		if (isFull()) {
			return NONE;
		}
		// What comes in the long run comes in the window too, so that no window is shorter than this, rounding aside.
		double bound = Math.min((fixed + ahead) / free, terms.horizon()) * (1 - 1e-9) - 1;
		long window = Math.max(atLeast, (long) bound);
		while (window <= terms.horizon()) {
			long needed = fixed + terms.errorsWithin(window + own, longest) + demand.within(window + late, terms.horizon());
			if (needed <= window) {
				return window;
			}
			window = needed;
		}
		return NONE;
	}
}
