/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import hullwright.network.data.Timing;
import hullwright.quantity.Duration;

/**
 * What has to go over a serial line. The load of a sentence is its length over its interval (common practice).
 *
 * @param regular what is told regularly
 * @param events what events tell at most, each as often as its least interval allows
 * @param busiestSecond the characters that become due within one second at most, if all intervals begin together; what events tell
 *        counts as often as it may occur
 * @param counted the sentences that these figures count, in the order of the list
 * @param leftOut those that no figure counts
 */
public record SerialLoad(CharacterRate regular, CharacterRate events, long busiestSecond, List<CountedSentence> counted,
		List<SentenceLeftOut> leftOut) {

	/** No sentence comes again within a microsecond: the fastest lines of the trade take 260 of them for a character. */
	private static final double SHORTEST_INTERVAL = 1e-6;

	/** In intervals, so that an interval of 0.1 s fits ten times into a second whatever its binary fraction. */
	private static final double ROUNDING = 1e-9;

	public SerialLoad {
		counted = List.copyOf(counted);
		leftOut = List.copyOf(leftOut);
	}

	/** The load of these sentences, of which none comes later than usual. */
	public static SerialLoad of(List<SentenceOnLine> sentences) {
		return of(sentences, none -> Optional.of(new Duration(0)));
	}

	/**
	 * The load of these sentences.
	 *
	 * @param late gives how much later than usual each may be due; none where there is no bound
	 */
	static SerialLoad of(List<SentenceOnLine> sentences, Function<SentenceOnLine, Optional<Duration>> late) {
		CharacterRate regular = CharacterRate.NONE;
		CharacterRate events = CharacterRate.NONE;
		long busiestSecond = 0;
		List<CountedSentence> counted = new ArrayList<>();
		Map<SentenceLeftOut, Integer> leftOut = new LinkedHashMap<>();
		for (SentenceOnLine sentence : sentences) {
			Optional<SentenceLeftOut.Reason> doubt = doubt(sentence);
			if (doubt.isPresent()) {
				leftOut.merge(new SentenceLeftOut(sentence, 1, doubt.get()), 1, Integer::sum);
				continue;
			}
			Timing timing = sentence.timing();
			CountedSentence one = new CountedSentence(sentence, timing.every().isPresent(), timing.every().or(timing::apart).orElseThrow(),
					late.apply(sentence));
			counted.add(one);
			if (one.regular()) {
				regular = regular.plus(one.rate());
			} else {
				events = events.plus(one.rate());
			}
			busiestSecond += one.characters() * timesInASecond(one.interval());
		}
		List<SentenceLeftOut> told = new ArrayList<>();
		leftOut.forEach((one, count) -> told.add(new SentenceLeftOut(one.sentence(), count, one.reason())));
		return new SerialLoad(regular, events, busiestSecond, counted, told);
	}

	/** All of it: what is told regularly, and what events tell at most. */
	public CharacterRate total() {
		return regular.plus(events);
	}

	/**
	 * The characters that may be due at one moment: of each sentence one, and of those that may come late as many more as fit; none
	 * where there is no bound.
	 */
	Optional<Double> burst() {
		double burst = 0;
		for (CountedSentence each : counted) {
			if (each.burst().isEmpty()) {
				return Optional.empty();
			}
			burst += each.burst().get();
		}
		return Optional.of(burst);
	}

	private static Optional<SentenceLeftOut.Reason> doubt(SentenceOnLine sentence) {
		int length = sentence.sentence().length();
		if (length <= 0) {
			return Optional.of(length == 0 ? SentenceLeftOut.Reason.LENGTH_UNSTATED : SentenceLeftOut.Reason.LENGTH_IMPOSSIBLE);
		}
		Timing timing = sentence.timing();
		Optional<Duration> interval = timing.every().or(timing::apart);
		if (interval.isEmpty()) {
			return Optional.of(timing.onEvent() ? SentenceLeftOut.Reason.EVENT_WITHOUT_LEAST_INTERVAL : SentenceLeftOut.Reason.TIMING_UNSTATED);
		}
		double seconds = interval.get().seconds();
		return seconds >= SHORTEST_INTERVAL && Double.isFinite(seconds) ? Optional.empty()
				: Optional.of(SentenceLeftOut.Reason.INTERVAL_IMPOSSIBLE);
	}

	private static long timesInASecond(Duration interval) {
		return Math.max(1, (long) Math.ceil(1 / interval.seconds() - ROUNDING));
	}
}
