/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import hullwright.network.data.MessageUse;
import hullwright.network.data.Sentence;
import hullwright.network.data.Timing;

/**
 * A sentence that goes over a serial line, with how often it does.
 *
 * @param talker the qualified name of the device that puts it on the line, which need not be its source
 * @param use the sentence and its key value; its message is a {@link Sentence}
 * @param timing how often it goes over this line, which may be less often than its source tells it
 */
public record SentenceOnLine(String talker, MessageUse use, Timing timing) {

	public SentenceOnLine {
		if (!(use.message() instanceof Sentence)) {
			throw new IllegalArgumentException(use + " is no sentence, and a serial line carries nothing else");
		}
	}

	/** The sentence. */
	public Sentence sentence() {
		return (Sentence) use.message();
	}
}
