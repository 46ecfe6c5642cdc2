/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.List;

/**
 * Something about a line that no text states and that was taken as told here.
 *
 * @param kind what was assumed
 * @param subjects the qualified names of what it was assumed for, sorted
 */
public record LineAssumption(Kind kind, List<String> subjects) {

	/** What is assumed where a text is silent. */
	public enum Kind {
		/** A node shows 30 kohm across the signal pair; ISO 11898-2 allows 20 to 100 kohm (from memory). */
		INPUT_RESISTANCE,
		/** A signal conductor is copper of 24 AWG, that of the light cable. */
		SIGNAL_CONDUCTOR,
		/** A signal takes 5 ns a metre, as the table of bit timings does. */
		DELAY,
		/** A contact has 5 mohm. */
		CONTACT_RESISTANCE,
		/** A terminator has 120 ohm. */
		TERMINATOR
	}

	public LineAssumption {
		subjects = List.copyOf(subjects);
	}
}
