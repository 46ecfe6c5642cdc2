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
		// of a single letter nothing is left if it was mistyped
		int tolerated = Math.min(typed.length() - 1, Math.max(1, typed.length() / 3));
		return candidates.limit(MOST_CANDIDATES).distinct()
				.filter(name -> Math.abs(name.length() - typed.length()) <= tolerated)
				.map(name -> new Candidate(name, slips(typed, name)))
				.filter(candidate -> candidate.slips <= tolerated)
				.min(Comparator.comparingInt(Candidate::slips).thenComparing(Candidate::name))
				.map(Candidate::name);
	}

	private record Candidate(String name, int slips) {
	}

	/**
	 * The edit distance of Damerau and Levenshtein between neighbours: a letter too many, too few or another, or two letters
	 * swapped, is one slip. Upper and lower case count as equal.
	 */
	private static int slips(String typed, String name) {
		int[][] slips = new int[typed.length() + 1][name.length() + 1];
		for (int row = 0; row <= typed.length(); row++) {
			for (int column = 0; column <= name.length(); column++) {
				slips[row][column] = row == 0 || column == 0 ? row + column : fewest(typed, name, slips, row, column);
			}
		}
		return slips[typed.length()][name.length()];
	}

	private static int fewest(String typed, String name, int[][] slips, int row, int column) {
		int replaced = slips[row - 1][column - 1] + (same(typed, row, name, column) ? 0 : 1);
		int fewest = Math.min(replaced, 1 + Math.min(slips[row - 1][column], slips[row][column - 1]));
		boolean swapped = row > 1 && column > 1 && same(typed, row, name, column - 1) && same(typed, row - 1, name, column);
		return swapped ? Math.min(fewest, slips[row - 2][column - 2] + 1) : fewest;
	}

	private static boolean same(String typed, int row, String name, int column) {
		return Character.toLowerCase(typed.charAt(row - 1)) == Character.toLowerCase(name.charAt(column - 1));
	}
}
