/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.messages;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds the name that someone who mistyped most likely meant.
 */
public final class NearestName {

	/** No boat has so many names in one place; a text made to keep the checker busy may. */
	private static final int MOST_CANDIDATES = 1000;

	private NearestName() {
	}

	/** The candidate with the fewest typing slips between it and the typed name, if there are few enough to be one. */
	public static Optional<String> to(String typed, Stream<String> candidates) {
		int tolerated = Math.max(1, typed.length() / 3);
		return candidates.limit(MOST_CANDIDATES).distinct()
				.filter(name -> Math.abs(name.length() - typed.length()) <= tolerated)
				.map(name -> new Candidate(name, slips(typed, name)))
				.filter(candidate -> candidate.slips <= tolerated)
				.min(Comparator.comparingInt(Candidate::slips).thenComparing(Candidate::name))
				.map(Candidate::name);
	}

	private record Candidate(String name, int slips) {
	}

	/** The edit distance of Levenshtein, upper and lower case counting as equal. */
	private static int slips(String typed, String name) {
		int[] above = new int[name.length() + 1];
		for (int column = 0; column <= name.length(); column++) {
			above[column] = column;
		}
		for (int row = 1; row <= typed.length(); row++) {
			int[] current = new int[name.length() + 1];
			current[0] = row;
			for (int column = 1; column <= name.length(); column++) {
				boolean same = Character.toLowerCase(typed.charAt(row - 1)) == Character.toLowerCase(name.charAt(column - 1));
				int replaced = above[column - 1] + (same ? 0 : 1);
				current[column] = Math.min(replaced, 1 + Math.min(above[column], current[column - 1]));
			}
			above = current;
		}
		return above[name.length()];
	}
}
