/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SortedSet;
import java.util.stream.Collectors;

/**
 * Says in few words on which of many boats something occurs: the options with which and without which it does. Boats are
 * numbered; a set of boats is a bit set.
 * <p>
 * Each boat that is not yet covered is taken with all its options as a condition, from which every term is struck whose
 * absence lets in no boat on which the thing does not occur. What can never be ordered may be let in: that is what makes the
 * conditions short. Conditions that the others make superfluous are struck at the end.
 */
final class SmallestCondition {

	private final List<String> options;
	private final List<SortedSet<String>> boats;
	private final List<BitSet> withOption = new ArrayList<>();

	/** The boats, by number, and all options in the order in which they are to be named. */
	SmallestCondition(List<String> options, List<SortedSet<String>> boats) {
		this.options = options;
		this.boats = boats;
		for (String option : options) {
			BitSet with = new BitSet(boats.size());
			for (int boat = 0; boat < boats.size(); boat++) {
				with.set(boat, boats.get(boat).contains(option));
			}
			withOption.add(with);
		}
	}

	/** The condition in the words of the language, {@code flybridge and not mast or radar}; empty if it is all boats or none. */
	String of(BitSet occurs) {
		if (occurs.isEmpty() || occurs.cardinality() == boats.size()) {
			return "";
		}
		List<Terms> conditions = new ArrayList<>();
		BitSet uncovered = (BitSet) occurs.clone();
		while (!uncovered.isEmpty()) {
			Terms widest = widest(uncovered.nextSetBit(0), occurs);
			conditions.add(widest);
			uncovered.andNot(widest.boats());
		}
		strikeSuperfluous(conditions, occurs);
		return conditions.stream().map(Terms::text).collect(Collectors.joining(" or "));
	}

	private Terms widest(int boat, BitSet occurs) {
		Boolean[] ordered = new Boolean[options.size()];
		for (int option = 0; option < ordered.length; option++) {
			ordered[option] = boats.get(boat).contains(options.get(option));
		}
		// terms that say "not" are harder to read, so they are struck first
		for (Boolean kind : new Boolean[] { false, true }) {
			for (int option = 0; option < ordered.length; option++) {
				if (kind.equals(ordered[option])) {
					ordered[option] = null;
					if (!isWithin(boatsOf(ordered), occurs)) {
						ordered[option] = kind;
					}
				}
			}
		}
		return new Terms(text(ordered), boatsOf(ordered));
	}

	private BitSet boatsOf(Boolean[] ordered) {
		BitSet matching = new BitSet(boats.size());
		matching.set(0, boats.size());
		for (int option = 0; option < ordered.length; option++) {
			if (ordered[option] != null && ordered[option]) {
				matching.and(withOption.get(option));
			} else if (ordered[option] != null) {
				matching.andNot(withOption.get(option));
			}
		}
		return matching;
	}

	private static boolean isWithin(BitSet some, BitSet all) {
		BitSet outside = (BitSet) some.clone();
		outside.andNot(all);
		return outside.isEmpty();
	}

	private static void strikeSuperfluous(List<Terms> conditions, BitSet occurs) {
		for (int at = conditions.size() - 1; at >= 0 && conditions.size() > 1; at--) {
			BitSet others = new BitSet();
			for (int other = 0; other < conditions.size(); other++) {
				if (other != at) {
					others.or(conditions.get(other).boats());
				}
			}
			if (isWithin(occurs, others)) {
				conditions.remove(at);
			}
		}
	}

	private String text(Boolean[] ordered) {
		List<String> terms = new ArrayList<>();
		for (int option = 0; option < ordered.length; option++) {
			if (ordered[option] != null) {
				terms.add((ordered[option] ? "" : "not ") + options.get(option));
			}
		}
		return String.join(" and ", terms);
	}

	private record Terms(String text, BitSet boats) {
	}
}
