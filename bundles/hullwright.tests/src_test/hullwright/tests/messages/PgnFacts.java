/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.messages;

import hullwright.quantity.ScalarQuantity;
import hullwright.spec.KeyField;
import hullwright.spec.Pgn;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What a source says about a PGN, as text that can be compared.
 *
 * @param kind     single or fast
 * @param length   in bytes; of a variable one the least
 * @param interval in ms, or on event
 * @param priority 0 to 7
 * @param keys     our names of the fields that tell two of its messages apart
 */
record PgnFacts(String kind, String length, String interval, String priority, Set<String> keys) {

	static final String SILENT = "not stated";
	static final String ON_EVENT = "on event";

	/** What the standard list says. */
	static PgnFacts of(Pgn pgn) {
		Set<String> keys = pgn.getKeys().stream().map(KeyField::getName).collect(Collectors.toCollection(TreeSet::new));
		if (pgn.isInstance()) {
			keys.add("instance");
		}
		String kind = pgn.isFast() == pgn.isSingle() ? SILENT : pgn.isFast() ? "fast" : "single";
		String length = pgn.isVaries() ? variableLength(pgn.getLeastLength()) : fixedLength(pgn.getLength());
		String interval = pgn.isOnEvent() ? ON_EVENT : pgn.getEvery() == null ? SILENT : every(milliseconds(pgn.getEvery()));
		return new PgnFacts(kind, length, interval, pgn.getPriority() == null ? SILENT : pgn.getPriority().toString(), keys);
	}

	private static long milliseconds(ScalarQuantity<?> duration) {
		return Math.round(duration.si() * 1000);
	}

	static String every(long milliseconds) {
		return "every " + milliseconds + " ms";
	}

	static String fixedLength(int bytes) {
		return bytes + " bytes";
	}

	static String variableLength(int least) {
		return "varies, at least " + least + " bytes";
	}

	/** What differs from another source: from the name of the fact to both figures. */
	Map<String, String> differencesFrom(PgnFacts other) {
		Map<String, String> differences = new TreeMap<>();
		compare(differences, KnownDifferences.KIND, kind, other.kind);
		compare(differences, KnownDifferences.LENGTH, length, other.length);
		compare(differences, KnownDifferences.INTERVAL, interval, other.interval);
		compare(differences, KnownDifferences.PRIORITY, priority, other.priority);
		compare(differences, KnownDifferences.KEYS, keys.toString(), other.keys.toString());
		return differences;
	}

	private static void compare(Map<String, String> differences, String what, String ours, String theirs) {
		if (!ours.equals(theirs)) {
			differences.put(what, ours + ", the dataset: " + theirs);
		}
	}
}
