/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.List;

import hullwright.spec.Condition;

/**
 * Something of a plan that is fitted on some boats.
 *
 * @param item what it is
 * @param all the conditions that must all hold
 * @param none the conditions of which none may hold: it stands where they say otherwise
 */
record WhenFitted<T>(T item, List<FittedWhen> all, List<FittedWhen> none) {

	/** Something under the conditions of the blocks around it and its own. */
	static <T> WhenFitted<T> under(Blocks blocks, Condition own, T item) {
		List<FittedWhen> all = new ArrayList<>(blocks.all());
		if (own != null) {
			all.add(FittedWhen.of(own));
		}
		return new WhenFitted<>(item, List.copyOf(all), blocks.none());
	}

	boolean on(Order order) {
		return all.stream().allMatch(condition -> condition.holds(order)) && none.stream().noneMatch(condition -> condition.holds(order));
	}

	/**
	 * The blocks of conditions around something.
	 *
	 * @param all the conditions of those whose first part it stands in
	 * @param none the conditions of those whose other part it stands in
	 */
	record Blocks(List<FittedWhen> all, List<FittedWhen> none) {

		static final Blocks NONE = new Blocks(List.of(), List.of());

		Blocks when(Condition condition) {
			return new Blocks(and(all, condition), none);
		}

		Blocks otherwise(Condition condition) {
			return new Blocks(all, and(none, condition));
		}

		private static List<FittedWhen> and(List<FittedWhen> outer, Condition condition) {
			List<FittedWhen> both = new ArrayList<>(outer);
			both.add(FittedWhen.of(condition));
			return List.copyOf(both);
		}
	}
}
