/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

/**
 * A sentence that goes over a line and that no figure counts, with the reason.
 *
 * @param sentence the sentence
 * @param count how often the list has it
 * @param reason why it is left out
 */
public record SentenceLeftOut(SentenceOnLine sentence, int count, Reason reason) {

	/** Why a sentence is left out. */
	public enum Reason {
		/** It is told when something happens, and nothing says how often that is at most. */
		EVENT_WITHOUT_LEAST_INTERVAL(false),
		/** Nothing says when it is told. */
		TIMING_UNSTATED(false),
		/** Nothing says how long it is. */
		LENGTH_UNSTATED(false),
		/** It is shorter than nothing. */
		LENGTH_IMPOSSIBLE(true),
		/** Its interval is not above zero, or no time at all. */
		INTERVAL_IMPOSSIBLE(true);

		private final boolean mistake;

		Reason(boolean mistake) {
			this.mistake = mistake;
		}

		/** Whether the text or the catalog states something that cannot be, not only too little. */
		public boolean isMistake() {
			return mistake;
		}
	}
}
