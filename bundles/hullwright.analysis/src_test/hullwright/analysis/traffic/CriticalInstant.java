/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.List;

/**
 * The textbook's worst case walked through instead of solved: a frame that blocks starts, everything comes right after it, all
 * that may precede goes first, and what is left is served in order until nothing is left. No equation, no fixed point.
 */
final class CriticalInstant {

	private final FrameStream stream;
	private long framesWaiting;
	private long burstsCome;

	private CriticalInstant(FrameStream stream) {
		this.stream = stream;
	}

	/**
	 * The longest delay of a stream in its busy period.
	 *
	 * @param preceding the streams that go before it
	 * @param blocking how long the blocking frame holds the bus from when all others come
	 * @param end when to give up
	 * @return the delay, or -1 if the busy period does not end in time
	 */
	static long longestDelay(FrameStream stream, List<FrameStream> preceding, long blocking, long end) {
		List<CriticalInstant> others = preceding.stream().map(CriticalInstant::new).toList();
		CriticalInstant own = new CriticalInstant(stream);
		long sent = 0;
		long longest = 0;
		long now = blocking;
		while (now <= end) {
			CriticalInstant next = own.hasAny(now) ? own : null;
			for (CriticalInstant other : others) {
				next = other.hasAny(now) ? other : next;
			}
			if (next == null) {
				return longest;
			}
			next.framesWaiting--;
			now += next.stream.frameBits();
			if (next == own) {
				long due = sent / stream.frames() * stream.interval() - stream.jitter();
				sent++;
				longest = Math.max(longest, now - due);
			}
		}
		return -1;
	}

	/** Whether a frame waits now, after all that has come by now has joined. */
	private boolean hasAny(long now) {
		while (Math.max(0, burstsCome * stream.interval() - stream.jitter()) <= now) {
			burstsCome++;
			framesWaiting += stream.frames();
		}
		return framesWaiting > 0;
	}
}
