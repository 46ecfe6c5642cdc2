/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.report;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * On which boats of a series a finding occurs.
 *
 * @param series the name of the series, empty for a finding that is about no boat
 * @param onAll whether it occurs on every boat that was checked
 * @param condition the options with and without which it occurs, in the language's own words
 *     ({@code flybridge and not mast}), empty if on all boats or on sold hulls only
 * @param hulls the sold hulls on which it occurs
 * @param boats on how many of the boats checked it occurs
 */
public record Occurrence(String series, boolean onAll, String condition, List<String> hulls, int boats) {

	/** The occurrence of a finding that is about the text and no boat in particular. */
	public static final Occurrence TEXT = new Occurrence("", true, "", List.of(), 0);

	public Occurrence {
		hulls = List.copyOf(hulls);
	}

	/**
	 * The options that the condition names as ordered: with each of them there is a boat on which the finding occurs and would not
	 * without it. Empty where the condition is only an example.
	 */
	public Set<String> neededOptions() {
		Set<String> needed = new TreeSet<>();
		if (!condition.startsWith("for example ")) {
			for (String term : condition.split(" or | and ")) {
				if (!term.isEmpty() && !term.startsWith("not ")) {
					needed.add(term);
				}
			}
		}
		return needed;
	}
}
