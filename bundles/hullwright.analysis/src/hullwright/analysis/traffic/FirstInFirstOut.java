/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.List;
import java.util.stream.LongStream;

/**
 * The delay of the streams of a device whose controller sends in the order in which messages came.
 *
 * <p>The idea is that of Davis, Kollmann, Pollex, Slomka, "Controller Area Network (CAN) schedulability analysis with FIFO
 * queues", ECRTS 2011 (and Real-Time Systems 49, 2013), from memory: a message waits for all that came before it in its queue, and each of those may go as late
 * as the least urgent of the queue would. Where each message of the device comes once in a busy period, the bound is the
 * paper's: {@code w = B + ΣC - C + Σ⌈(w + J + f + τ)/T⌉·C} over the more urgent messages of other devices. Here a message may
 * also come when the queue has been filling for a while, so that intervals shorter than the delay are covered: for each moment
 * {@code a} of the busy period at which something joins the queue, {@code ΣC} is all that has joined it until then, and
 * {@code a} is taken off the delay.
 *
 * <p>To the other devices a message that waits in such a queue appears only when it is the oldest there. That is jitter for
 * them ({@code f}), which {@link WorstCaseDelays} feeds back until nothing changes any more.
 */
final class FirstInFirstOut {

	private final List<FrameStream> streams;
	private final BusyWindow window;
	private final BusyWindow all;
	private final int blocking;

	/**
	 * @param streams the streams of the device
	 * @param others what others ask for that may precede the least urgent of them
	 * @param all what those and the streams themselves ask for
	 * @param blocking the longest frame of another device that can precede none of them
	 * @param longest the longest frame that an error may spoil
	 */
	FirstInFirstOut(List<FrameStream> streams, Demand others, Demand all, int blocking, int longest, BusTerms terms) {
		this.streams = streams;
		this.window = new BusyWindow(terms, others, longest);
		this.all = new BusyWindow(terms, all, longest);
		this.blocking = blocking;
	}

	/** The delays of the streams, in their order. */
	List<Delay> delays() {
		long busyPeriod = all.untilAllIsDone(blocking, 1);
		if (busyPeriod == BusyWindow.NONE) {
			return streams.stream().map(stream -> (Delay) new Delay.Unbounded(all.reason())).toList();
		}
		long[] moments = moments(busyPeriod);
		int[] frames = streams.stream().mapToInt(FrameStream::frameBits).distinct().toArray();
		long[] longest = new long[frames.length];
		for (int i = 0; i < frames.length; i++) {
			longest[i] = longest(frames[i], moments);
		}
		return streams.stream().map(stream -> delay(stream, frames, longest, busyPeriod)).toList();
	}

	/** The moments of the busy period at which something joins the queue. */
	private long[] moments(long busyPeriod) {
		return streams.stream().flatMapToLong(stream -> LongStream.rangeClosed(0, (busyPeriod + stream.jitter()) / stream.interval())
				.map(instance -> Math.max(0, instance * stream.interval() - stream.jitter())))
				.filter(moment -> moment == 0 || moment < busyPeriod).sorted().distinct().toArray();
	}

	private long longest(int frame, long[] moments) {
		long longest = 0;
		long wait = 0;
		for (long moment : moments) {
			wait = window.before(blocking + joinedUntil(moment) - frame, wait, frame);
			if (wait == BusyWindow.NONE) {
				return BusyWindow.NONE;
			}
			longest = Math.max(longest, wait + frame - moment);
		}
		return longest;
	}

	private long joinedUntil(long moment) {
		long bits = 0;
		for (FrameStream stream : streams) {
			bits += ((moment + stream.jitter()) / stream.interval() + 1) * stream.burstBits();
		}
		return bits;
	}

	private Delay delay(FrameStream stream, int[] frames, long[] longest, long busyPeriod) {
		int i = 0;
		while (frames[i] != stream.frameBits()) {
			i++;
		}
		return longest[i] == BusyWindow.NONE
				? new Delay.Unbounded(window.reason())
				: new Delay.Bounded(stream.jitter() + longest[i], 0, busyPeriod);
	}
}
