/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.BitRate;
import hullwright.quantity.Duration;
import hullwright.quantity.Ratio;

/**
 * How long sentences wait at the talker, which tells them in the order in which they become due. Of what it tells of its own none
 * becomes due sooner than its interval after the one before; what it passes on has waited before and may, by as much as it waited.
 */
public sealed interface Waiting {

	/**
	 * Nothing waits longer than this.
	 *
	 * <p>What is due in a time t is one of each sentence and at most t / interval more, so that of a line that carries more than
	 * is told on average, no more waits than one of each: the worst case is that all become due at one moment. (Derived; the
	 * argument is that of a queue which is first in, first out, with all releases at its start.) What is passed on and may come late
	 * adds late / interval of itself.
	 *
	 * @param backlog the characters that wait at most: one of each sentence, unless some may come late
	 * @param longest how long a sentence takes at most from being due until its last character is out, whichever it is
	 * @param run how long characters go out without a pause at most; none if for longer than ten seconds
	 * @param sentences how long each takes at most, in the order of the list
	 */
	record Bounded(long backlog, Duration longest, Optional<Duration> run, List<OfSentence> sentences) implements Waiting {

		public Bounded {
			sentences = List.copyOf(sentences);
		}
	}

	/** There is no bound. */
	record Unbounded(Reason reason) implements Waiting {

		/** Whether there may well be a bound, and no more is missing than what would tell it. */
		public boolean isForWantOfFacts() {
			return reason == Reason.RATE_UNKNOWN || reason == Reason.SEVERAL_TALKERS;
		}
	}

	/** Why there is no bound. */
	enum Reason {
		/** Nobody knows how fast the line signals. */
		RATE_UNKNOWN,
		/** As much comes as the line carries, or more. */
		OVERLOAD,
		/** The talker passes sentences on from a line that has no bound itself, or round in a circle. */
		FED_WITHOUT_BOUND,
		/** More than one talks, and nobody hears any of them. */
		SEVERAL_TALKERS
	}

	/**
	 * How long one sentence takes at most.
	 *
	 * @param sentence the sentence
	 * @param waits until its first character goes out
	 * @param done until its last character is out
	 */
	record OfSentence(CountedSentence sentence, Duration waits, Duration done) {

		/** Whether the next may be due before this one is out, so that a talker that keeps only the latest never tells it. */
		public boolean mayBeOvertaken() {
			return done.exceeds(sentence.interval());
		}
	}

	/** The bound for what goes over a line that one device talks on and whose rate is known. */
	static Waiting of(SerialLoad load, BitRate rate) {
		CharacterRate line = CharacterRate.of(rate);
		if (isFull(load.total().shareOf(line))) {
			return new Unbounded(Reason.OVERLOAD);
		}
		Optional<Double> burst = load.burst();
		if (burst.isEmpty()) {
			return new Unbounded(Reason.FED_WITHOUT_BOUND);
		}
		long backlog = (long) Math.ceil(burst.get() - 1e-6);
		Duration longest = line.timeFor(backlog);
		return new Bounded(backlog, longest, LongestRun.of(load.counted(), rate), load.counted().stream()
				.map(each -> new OfSentence(each, line.timeFor(backlog - each.characters()), longest)).toList());
	}

	/** Whether a share leaves nothing of a line, for what waits to drain. */
	static boolean isFull(Ratio share) {
		return !new Ratio(1).exceeds(share);
	}
}
