/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.network.Selection;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.SeriesRule;
import hullwright.rules.SeriesUnderCheck;
import hullwright.rules.Severity;
import java.util.List;

/**
 * An option is offered that no combination may hold. Where no boat can be ordered at all, that alone is told.
 */
public final class OptionCannotBeOrdered implements SeriesRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/option-cannot-be-ordered", "Option that nobody can order", Severity.WARNING,
				"the option {option} cannot be ordered: what it requires excludes it, or each other", "follows from the options of the text");
	}

	@Override
	public List<Finding> check(SeriesUnderCheck series) {
		List<Selection> ordered = series.selections().stream().filter(boat -> boat.hull().isEmpty()).toList();
		if (!series.isComplete() || ordered.isEmpty()) {
			return List.of();
		}
		return series.series().options().stream()
				.filter(option -> ordered.stream().noneMatch(boat -> boat.options().contains(option.name())))
				.map(option -> series.finding(option.origin()).value("option", option.name()).build())
				.toList();
	}
}
