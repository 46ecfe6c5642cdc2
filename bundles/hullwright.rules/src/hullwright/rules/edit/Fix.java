/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import java.util.List;

/**
 * Something that could be done about a finding.
 *
 * @param title what it does, for people
 * @param reach whether the boat stays the same
 * @param intents the edits, all of them or none
 */
public record Fix(String title, Reach reach, List<EditIntent> intents) {

	public Fix {
		intents = List.copyOf(intents);
	}

	/** Whether a fix changes the boat. */
	public enum Reach {
		/** Completes what the text leaves open; the boat stays the same. */
		SAFE,
		/** Changes the boat; a person chooses. */
		DESIGN
	}
}
