/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.BitRate;
import hullwright.quantity.Duration;

/**
 * How long a line carries characters without a pause: the busy period of the textbooks on schedulability, which is longest when
 * all sentences become due at its start.
 */
final class LongestRun {

	/** Runs beyond this are not followed, in seconds; no buffer of the trade holds nearly as much. */
	private static final double HORIZON = 10;

	/** In intervals: a sentence that becomes due at the very end of a run prolongs it, whatever the binary fractions. */
	private static final double ROUNDING = 1e-9;

	private LongestRun() {
	}

	/** The longest run; none if it goes on beyond the horizon. */
	static Optional<Duration> of(List<CountedSentence> sentences, BitRate rate) {
		CharacterRate line = CharacterRate.of(rate);
		double run = 0;
		double next = due(sentences, 0, line);
		while (next > run) {
			if (!(next <= HORIZON)) {
				return Optional.empty();
			}
			run = next;
			next = due(sentences, run, line);
		}
		return Optional.of(new Duration(run));
	}

	/** How long the line is busy with what has become due, in seconds. */
	private static double due(List<CountedSentence> sentences, double until, CharacterRate line) {
		double characters = 0;
		for (CountedSentence each : sentences) {
			characters += each.characters() * (Math.floor((until + each.late().orElseThrow().seconds()) / each.interval().seconds() + ROUNDING) + 1);
		}
		return characters / line.perSecond();
	}
}
