/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The delays of all streams of a bus, whatever addresses their senders claim.
 *
 * <p>For each stream all others count as more urgent that some order of addresses lets go before it, and only the rest as
 * blocking. This is safe: let an order make some of the doubtful streams less urgent. Each could then block with one frame, but
 * counted as more urgent it contributes that frame in every window, and more; so every right-hand side of the equations is at
 * least what it is for that order, and with it their least solution. Where all controllers send by priority no bound is too high
 * because of addresses, either: the order in which the sender of the stream has the highest address of all makes exactly these
 * streams more urgent.
 */
final class WorstCaseDelays {

	/** Rounds after which a queue that still grows counts as one without a bound. */
	private static final int MOST_ROUNDS = 500;

	private final List<FrameStream> streams;
	private final BusTerms terms;
	private final int[] byFirst;
	private final int[] longestFrom;
	private final List<int[]> levels;
	private final long[] queued;
	private final Delay[] delays;

	private WorstCaseDelays(List<FrameStream> streams, BusTerms terms) {
		this.streams = streams;
		this.terms = terms;
		this.byFirst = IntStream.range(0, streams.size()).boxed()
				.sorted(Comparator.comparingInt(i -> streams.get(i).identifiers().first())).mapToInt(Integer::intValue).toArray();
		this.longestFrom = new int[byFirst.length + 1];
		longestFrom[byFirst.length] = terms.notListed();
		for (int i = byFirst.length - 1; i >= 0; i--) {
			longestFrom[i] = Math.max(longestFrom[i + 1], streams.get(byFirst[i]).frameBits());
		}
		this.levels = levels(streams);
		this.queued = new long[streams.size()];
		this.delays = new Delay[streams.size()];
	}

	/** The delays, in the order of the streams. */
	static List<Delay> of(List<FrameStream> streams, BusTerms terms) {
		WorstCaseDelays found = new WorstCaseDelays(streams, terms);
		boolean growing = true;
		for (int round = 0; growing; round++) {
			found.pass();
			growing = found.feedBack(round >= MOST_ROUNDS);
		}
		return List.of(found.delays);
	}

	/** The streams that are looked at together, those that fewest others precede first: each alone, or those of one queue. */
	private static List<int[]> levels(List<FrameStream> streams) {
		List<int[]> levels = new ArrayList<>();
		Map<String, List<Integer>> queues = new LinkedHashMap<>();
		for (int i = 0; i < streams.size(); i++) {
			if (streams.get(i).queue() == Queueing.FIRST_IN_FIRST_OUT) {
				queues.computeIfAbsent(streams.get(i).sender(), sender -> new ArrayList<>()).add(i);
			} else {
				levels.add(new int[] { i });
			}
		}
		queues.values().forEach(members -> levels.add(members.stream().mapToInt(Integer::intValue).toArray()));
		levels.sort(Comparator.comparingInt(members -> last(streams, members)));
		return levels;
	}

	private static int last(List<FrameStream> streams, int[] members) {
		return Arrays.stream(members).map(i -> streams.get(i).identifiers().last()).max().orElseThrow();
	}

	/** Finds all delays with what is known so far of the time that messages wait in queues before others see them. */
	private void pass() {
		int[] kinds = new int[streams.size()];
		Demand demand = kinds(kinds);
		boolean endlessQueue = false;
		int longest = 0;
		int next = 0;
		for (int[] members : levels) {
			int last = last(streams, members);
			for (; next < byFirst.length && streams.get(byFirst[next]).identifiers().first() <= last; next++) {
				FrameStream stream = streams.get(byFirst[next]);
				demand.add(kinds[byFirst[next]], stream.burstBits());
				longest = Math.max(longest, stream.frameBits());
				endlessQueue |= queued[byFirst[next]] > terms.horizon();
			}
			if (queued[members[0]] > terms.horizon()) {
				continue;
			} else if (endlessQueue) {
				Arrays.stream(members).forEach(i -> delays[i] = new Delay.Unbounded(ResponseTime.Reason.QUEUE_WITHOUT_BOUND));
			} else {
				find(members, kinds, demand, longestFrom[next], longest);
			}
		}
	}

	private void find(int[] members, int[] kinds, Demand demand, int blocking, int longest) {
		Demand others = demand.copy();
		Arrays.stream(members).forEach(i -> others.add(kinds[i], -streams.get(i).burstBits()));
		FrameStream first = streams.get(members[0]);
		if (first.queue() == Queueing.BY_PRIORITY) {
			delays[members[0]] = new PriorityQueue(first, others, demand, blocking, longest, terms).delay();
			return;
		}
		List<FrameStream> queue = Arrays.stream(members).mapToObj(streams::get).toList();
		List<Delay> found = new FirstInFirstOut(queue, others, demand, blocking, longest, terms).delays();
		IntStream.range(0, members.length).forEach(i -> delays[members[i]] = found.get(i));
	}

	/** Numbers the pairs of interval and jitter, as others see them. */
	private Demand kinds(int[] kinds) {
		record Kind(long interval, long jitter) {
		}
		Map<Kind, Integer> numbers = new HashMap<>();
		List<Kind> all = new ArrayList<>();
		for (int i = 0; i < kinds.length; i++) {
			Kind kind = new Kind(streams.get(i).interval(), streams.get(i).jitter() + queued[i]);
			kinds[i] = numbers.computeIfAbsent(kind, each -> numbers.size());
			if (kinds[i] == all.size()) {
				all.add(kind);
			}
		}
		return Demand.of(all.stream().mapToLong(Kind::interval).toArray(), all.stream().mapToLong(Kind::jitter).toArray());
	}

	/** Takes over how long messages wait in their queues; tells whether that is longer than in the last round. */
	private boolean feedBack(boolean giveUp) {
		boolean growing = false;
		for (int i = 0; i < queued.length; i++) {
			FrameStream stream = streams.get(i);
			if (stream.queue() == Queueing.BY_PRIORITY || queued[i] > terms.horizon()) {
				continue;
			}
			long wait = delays[i] instanceof Delay.Bounded bounded
					? bounded.bits() - stream.jitter() - stream.frameBits()
					: terms.horizon() + 1;
			if (wait > queued[i]) {
				growing = true;
				if (giveUp) {
					delays[i] = new Delay.Unbounded(ResponseTime.Reason.BEYOND_HORIZON);
					wait = terms.horizon() + 1;
				}
				queued[i] = wait;
			}
		}
		return growing;
	}
}
