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

	private final FrameStream stream;
	private final BusyWindow all;
	private final BusyWindow others;
	private final int blocking;

	/**
	 * @param stream the stream
	 * @param others what all ask for that may precede it
	 * @param all what those and the stream itself ask for
	 * @param blocking the longest frame that cannot precede it
	 * @param longest the longest frame that an error may spoil
	 */
	PriorityQueue(FrameStream stream, Demand others, Demand all, int blocking, int longest, BusTerms terms) {
		this.stream = stream;
		this.others = new BusyWindow(terms, others, longest);
		this.all = new BusyWindow(terms, all, longest);
		this.blocking = blocking;
	}

	/** The delay of the stream. */
	Delay delay() {
		long wait = all.isFull() ? BusyWindow.NONE : waitOf(0, 0);
		if (wait == BusyWindow.NONE) {
			return new Delay.Unbounded(all.reason());
		}
		long busyPeriod = all.untilAllIsDone(blocking, wait + stream.frameBits());
		if (busyPeriod == BusyWindow.NONE) {
			return new Delay.Unbounded(all.reason());
		}
		long worst = wait;
		long worstInstance = 0;
		long instances = (busyPeriod + stream.jitter() - 1) / stream.interval() + 1;
		for (long instance = 1; instance < instances; instance++) {
			wait = waitOf(instance, wait);
			if (wait == BusyWindow.NONE) {
				return new Delay.Unbounded(all.reason());
			}
			if (wait - instance * stream.interval() > worst) {
				worst = wait - instance * stream.interval();
				worstInstance = instance;
			}
		}
		return new Delay.Bounded(stream.jitter() + worst + stream.frameBits(), worstInstance, busyPeriod);
	}

	/** How long the last frame of a burst waits from the start of the busy period on. */
	private long waitOf(long instance, long atLeast) {
		return others.before(blocking + (instance + 1) * stream.burstBits() - stream.frameBits(), atLeast, stream.frameBits());
	}
}
