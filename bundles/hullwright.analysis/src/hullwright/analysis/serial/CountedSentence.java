/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.Optional;

import hullwright.quantity.Duration;

/**
 * A sentence that figures count.
 *
 * @param sentence the sentence
 * @param regular whether it is told regularly; if not, events tell it
 * @param interval how often it is told, or how long two of them are apart at least if events tell it
 * @param late how much later than usual it may be due, since it waited elsewhere before it was passed on, so that two come closer than
 *        their interval; zero for what a device tells of its own, none where there is no bound
 */
public record CountedSentence(SentenceOnLine sentence, boolean regular, Duration interval, Optional<Duration> late) {

	/** The characters of its longest usual form, with the leading sign and the line end. */
	public int characters() {
		return sentence.sentence().length();
	}

	/**
	 * The characters of it that may be due at one moment, beside what follows at its rate; none where there is no bound. In a time t
	 * it is due at most (t + late) / interval times and once more.
	 */
	Optional<Double> burst() {
		return late.map(each -> characters() * (1 + each.seconds() / interval.seconds()));
	}

	/** What it takes in the long run, at most if events tell it. */
	public CharacterRate rate() {
		return new CharacterRate(characters() / interval.seconds());
	}
}
