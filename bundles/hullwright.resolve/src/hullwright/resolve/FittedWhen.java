/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.List;

import hullwright.spec.Condition;
import hullwright.spec.SpecPackage;

/**
 * When something is fitted: at least one of the alternatives holds.
 *
 * @param alternatives the alternatives; each holds when all its terms do
 */
record FittedWhen(List<List<Term>> alternatives) {

	static final FittedWhen ALWAYS = new FittedWhen(List.of(List.of()));
	static final FittedWhen NEVER = new FittedWhen(List.of());

	/** One thing that holds for an order or does not. */
	sealed interface Term {
		boolean holds(Order order);
	}

	private record OptionTerm(String option, boolean ordered) implements Term {
		@Override
		public boolean holds(Order order) {
			return order.options().contains(option) == ordered;
		}
	}

	private record FromHull(int first) implements Term {
		@Override
		public boolean holds(Order order) {
			return order.hull().isEmpty() || order.hull().getAsInt() >= first;
		}
	}

	private record UntilHull(int last) implements Term {
		@Override
		public boolean holds(Order order) {
			return order.hull().isPresent() && order.hull().getAsInt() <= last;
		}
	}

	static FittedWhen of(Condition condition) {
		return condition == null ? ALWAYS : new FittedWhen(condition.getAlternatives().stream()
				.map(conjunction -> conjunction.getTerms().stream().map(FittedWhen::term).toList())
				.toList());
	}

	private static Term term(hullwright.spec.Term term) {
		if (term.getOption() != null) {
			return new OptionTerm(term.getOption().getName(), !term.isNegated());
		}
		return term.eIsSet(SpecPackage.Literals.TERM__UNTIL_HULL) ? new UntilHull(term.getUntilHull()) : new FromHull(term.getFromHull());
	}

	boolean holds(Order order) {
		for (List<Term> alternative : alternatives) {
			if (alternative.stream().allMatch(term -> term.holds(order))) {
				return true;
			}
		}
		return false;
	}
}
