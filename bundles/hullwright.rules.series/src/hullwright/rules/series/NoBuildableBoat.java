/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.SeriesRule;
import hullwright.rules.SeriesUnderCheck;
import hullwright.rules.Severity;
import java.util.List;

/**
 * The options of a series contradict each other so that no boat can be ordered at all.
 */
public final class NoBuildableBoat implements SeriesRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/no-buildable-boat", "No boat can be ordered", Severity.ERROR,
				"no boat of {series} can be ordered: whatever is chosen, some option requires what another excludes",
				"follows from the options of the text");
	}

	@Override
	public List<Finding> check(SeriesUnderCheck series) {
		boolean any = series.selections().stream().anyMatch(boat -> boat.hull().isEmpty());
		return !series.isComplete() || any ? List.of() : List.of(series.finding(series.series().origin()).value("series", series.series().name()).build());
	}
}
