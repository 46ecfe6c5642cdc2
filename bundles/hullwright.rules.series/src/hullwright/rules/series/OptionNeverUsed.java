/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.network.BoatSeries;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.SeriesRule;
import hullwright.rules.SeriesUnderCheck;
import hullwright.rules.Severity;
import java.util.List;

/**
 * An option that can be ordered changes nothing on the boat.
 */
public final class OptionNeverUsed implements SeriesRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/option-never-used", "Option changes nothing", Severity.WARNING,
				"the option {option} changes nothing: no condition of the text depends on it",
				"common practice: what is sold is on the drawing");
	}

	@Override
	public List<Finding> check(SeriesUnderCheck series) {
		BoatSeries offered = series.series();
		return offered.options().stream()
				.filter(option -> !offered.conditions().contains(option.name()) && !isAlternative(option, offered))
				.map(option -> series.finding(option.origin()).value("option", option.name()).build())
				.toList();
	}

	/** The one of two that is what the boat is without the other: the single engine beside the twin. */
	private static boolean isAlternative(BoatSeries.Option option, BoatSeries offered) {
		return offered.options().stream().filter(other -> offered.conditions().contains(other.name()))
				.anyMatch(other -> option.excludes().contains(other.name()) || other.excludes().contains(option.name()));
	}
}
