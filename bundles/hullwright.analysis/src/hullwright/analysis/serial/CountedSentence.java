/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import hullwright.quantity.Duration;

/**
 * A sentence that figures count.
 *
 * @param sentence the sentence
 * @param regular whether it is told regularly; if not, events tell it
 * @param interval how often it is told, or how long two of them are apart at least if events tell it
 */
public record CountedSentence(SentenceOnLine sentence, boolean regular, Duration interval) {

	/** The characters of its longest usual form, with the leading sign and the line end. */
	public int characters() {
		return sentence.sentence().length();
	}

	/** What it takes in the long run, at most if events tell it. */
	public CharacterRate rate() {
		return new CharacterRate(characters() / interval.seconds());
	}
}
