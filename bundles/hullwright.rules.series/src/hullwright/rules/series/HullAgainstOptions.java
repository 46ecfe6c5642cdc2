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
 * A hull is sold with options that cannot be ordered together.
 */
public final class HullAgainstOptions implements SeriesRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/hull-against-options", "Hull sold against the options", Severity.ERROR,
				"hull {hull} is sold with options that do not go together: {why}", "follows from the options of the text");
	}

	@Override
	public List<Finding> check(SeriesUnderCheck series) {
		return series.series().hulls().stream().flatMap(hull -> hull.contradiction().stream().map(why -> finding(series, hull, why))).toList();
	}

	private static Finding finding(SeriesUnderCheck series, BoatSeries.SoldHull hull, String why) {
		return series.finding(hull.origin()).value("hull", hull.name()).value("why", why).build();
	}
}
