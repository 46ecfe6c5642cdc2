/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Selection;
import hullwright.resolve.OptionSpace;
import hullwright.resolve.SeriesPlan;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Which boats of a series are checked.
 *
 * @param boats the boats, combinations of options before sold hulls
 * @param allOrderable whether every combination that can be ordered is among them
 * @param allSold whether every sold hull is among them
 * @param gap why not all that was asked for can be checked, in words
 */
record BoatsOfSeries(List<Selection> boats, boolean allOrderable, boolean allSold, Optional<String> gap) {

	/** Combinations of options up to this number are all checked. */
	static final int MOST_COMBINATIONS = 4096;

	static BoatsOfSeries wanted(SeriesPlan plan, WantedBoats wanted) {
		if (wanted instanceof WantedBoats.WithOptions with) {
			return one(SeriesPlan.ordered(with.options()), plan.options().whyNot(with.options()).map(why -> "series " + plan.name() + ": " + why));
		} else if (wanted instanceof WantedBoats.Sold sold) {
			return plan.hull(sold.name())
					.map(hull -> one(hull, Optional.empty()))
					.orElse(none("series " + plan.name() + " has no hull '" + sold.name() + "'"));
		} else if (wanted instanceof WantedBoats.Plainest) {
			return plainest(plan);
		}
		return all(plan);
	}

	private static BoatsOfSeries plainest(SeriesPlan plan) {
		return plan.options().orderable(MOST_COMBINATIONS).combinations().stream()
				.min(Comparator.<SortedSet<String>>comparingInt(Set::size).thenComparing(options -> String.join(" ", options)))
				.map(options -> one(SeriesPlan.ordered(options), Optional.empty()))
				.orElseGet(() -> none("no boat of series " + plan.name() + " can be ordered: its options contradict each other"));
	}

	private static BoatsOfSeries one(Selection boat, Optional<String> gap) {
		return new BoatsOfSeries(gap.isPresent() ? List.of() : List.of(boat), false, false, gap);
	}

	private static BoatsOfSeries none(String why) {
		return new BoatsOfSeries(List.of(), false, false, Optional.of(why));
	}

	private static BoatsOfSeries all(SeriesPlan plan) {
		OptionSpace.Orderable orderable = plan.options().orderable(MOST_COMBINATIONS);
		List<Selection> boats = new ArrayList<>();
		if (orderable.more()) {
			few(plan).forEach(boats::add);
		} else {
			orderable.combinations().forEach(options -> boats.add(SeriesPlan.ordered(options)));
		}
		Optional<String> gap = Optional.empty();
		if (orderable.more()) {
			gap = Optional.of("series " + plan.name() + " has more than " + MOST_COMBINATIONS + " boats that can be ordered; checked were "
					+ boats.size() + " of them, with few options or all but few, and the sold hulls");
		} else if (boats.isEmpty()) {
			gap = Optional.of("no boat of series " + plan.name() + " was checked, since none can be ordered");
		}
		plan.hullNames().forEach(hull -> plan.hull(hull).ifPresent(boats::add));
		return new BoatsOfSeries(List.copyOf(boats), !orderable.more(), true, gap);
	}

	/** A sample of a space too large to walk: each option alone, and each left out of all, where that can be ordered. */
	private static Set<Selection> few(SeriesPlan plan) {
		List<String> options = plan.options().options();
		Set<Selection> few = new LinkedHashSet<>();
		addIfOrderable(plan, Set.of(), few);
		addIfOrderable(plan, Set.copyOf(options), few);
		for (String option : options) {
			addIfOrderable(plan, Set.of(option), few);
			Set<String> allBut = new TreeSet<>(options);
			allBut.remove(option);
			addIfOrderable(plan, allBut, few);
		}
		return few;
	}

	private static void addIfOrderable(SeriesPlan plan, Set<String> options, Set<Selection> few) {
		if (plan.options().whyNot(options).isEmpty()) {
			few.add(SeriesPlan.ordered(new TreeSet<>(options)));
		}
	}

	/** How many of the boats are combinations of options. */
	int combinations() {
		return (int) boats.stream().takeWhile(boat -> boat.hull().isEmpty()).count();
	}
}
