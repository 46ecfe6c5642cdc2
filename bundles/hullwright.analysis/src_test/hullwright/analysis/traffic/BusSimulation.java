/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A bus, event by event: whenever it is free, each device offers what its queue says, and the lowest identifier goes. Shares no
 * code with the analyses.
 */
final class BusSimulation {

	/** A burst that a device is to send: when it is due, and when it stands in the queue. */
	record Arrival(int stream, long due, long queued) {
	}

	private static final class Waiting {
		final Arrival arrival;
		int framesLeft;

		Waiting(Arrival arrival, int frames) {
			this.arrival = arrival;
			this.framesLeft = frames;
		}
	}

	private final List<FrameStream> streams;
	private final int[] addresses;
	private final int errorsAtOnce;
	private final long errorsApart;

	/** A bus whose streams are sent from these addresses, with as many errors as are allowed, each at the last bit of a frame. */
	BusSimulation(List<FrameStream> streams, int[] addresses, int errorsAtOnce, long errorsApart) {
		this.streams = streams;
		this.addresses = addresses;
		this.errorsAtOnce = errorsAtOnce;
		this.errorsApart = errorsApart;
	}

	/** The longest time of each stream from when a burst is due until its last frame is through; 0 if it sends none. */
	long[] longestDelays(List<Arrival> arrivals) {
		List<Arrival> coming = new ArrayList<>(arrivals);
		coming.sort(Comparator.comparingLong(Arrival::queued));
		List<Waiting> waiting = new ArrayList<>();
		long[] longest = new long[streams.size()];
		long now = 0;
		long nextError = Long.MIN_VALUE / 2;
		int next = 0;
		while (next < coming.size() || !waiting.isEmpty()) {
			if (waiting.isEmpty()) {
				now = Math.max(now, coming.get(next).queued());
			}
			for (; next < coming.size() && coming.get(next).queued() <= now; next++) {
				waiting.add(new Waiting(coming.get(next), streams.get(coming.get(next).stream()).frames()));
			}
			Waiting first = first(waiting);
			now += streams.get(first.arrival.stream()).frameBits();
			if (errorsAtOnce > 0 && now - 1 >= nextError - (errorsAtOnce - 1) * errorsApart) {
				nextError = Math.max(nextError, now - 1) + errorsApart;
				now += 31;
			} else if (--first.framesLeft == 0) {
				waiting.remove(first);
				longest[first.arrival.stream()] = Math.max(longest[first.arrival.stream()], now - first.arrival.due());
			}
		}
		return longest;
	}

	private Waiting first(List<Waiting> waiting) {
		Waiting best = null;
		for (Waiting each : waiting) {
			if (isOffered(each, waiting) && (best == null || identifier(each) < identifier(best))) {
				best = each;
			}
		}
		return best;
	}

	/** A queue in order offers its oldest only; those that wait are in the order in which they came. */
	private boolean isOffered(Waiting one, List<Waiting> waiting) {
		FrameStream stream = streams.get(one.arrival.stream());
		if (stream.queue() == Queueing.BY_PRIORITY) {
			return true;
		}
		for (Waiting each : waiting) {
			if (streams.get(each.arrival.stream()).sender().equals(stream.sender())) {
				return each == one;
			}
		}
		throw new IllegalStateException();
	}

	private int identifier(Waiting one) {
		return streams.get(one.arrival.stream()).identifiers().first() << 8 | addresses[one.arrival.stream()];
	}
}
