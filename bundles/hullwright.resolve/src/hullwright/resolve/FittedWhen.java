/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.spec.Condition;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * When something is fitted: at least one of the alternatives holds.
 *
 * @param alternatives the alternatives; each holds when all its terms do
 */
record FittedWhen(List<List<Term>> alternatives) {

	static final FittedWhen ALWAYS = new FittedWhen(List.of(List.of()));

	/** One option, ordered or not. */
	record Term(String option, boolean ordered) {
	}

	static FittedWhen of(Condition condition) {
		return condition == null ? ALWAYS : new FittedWhen(condition.getAlternatives().stream()
				.map(conjunction -> conjunction.getTerms().stream()
						.map(term -> new Term(term.getOption().getName(), !term.isNegated()))
						.toList())
				.toList());
	}

	boolean holds(Set<String> options) {
		for (List<Term> alternative : alternatives) {
			if (alternative.stream().allMatch(term -> options.contains(term.option) == term.ordered)) {
				return true;
			}
		}
		return false;
	}

	/** Holds when both do. */
	FittedWhen and(FittedWhen other) {
		List<List<Term>> both = new ArrayList<>();
		for (List<Term> mine : alternatives) {
			for (List<Term> others : other.alternatives) {
				List<Term> joined = new ArrayList<>(mine);
				joined.addAll(others);
				both.add(joined);
			}
		}
		return new FittedWhen(both);
	}
}
