/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.HouseDemands;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;

/**
 * A part is fitted that is in none of the catalogs from which the house buys. Told once for a part.
 */
public final class PartNotApproved implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/part-not-approved", "Part outside the approved catalogs", Severity.ERROR,
				"{element} is a {part} of catalog {catalog}, which is not approved; approved: {approved}", "the profile: the catalogs that it approves");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return boat.house().approved().map(approved -> look(boat, approved)).orElse(List.of());
	}

	private static List<Finding> look(BoatUnderCheck boat, HouseDemands.ApprovedCatalogs approved) {
		String names = String.join(", ", approved.names().stream().sorted().toList());
		return FirstOfEach.part(boat.boat(), part -> !approved.names().contains(part.identity().catalog()))
				.map(fitted -> boat.finding(fitted.place()).source(approved.source()).key(FirstOfEach.name(fitted))
						.value("element", fitted.place().simpleName())
						.value("part", fitted.part().identity().name())
						.value("catalog", fitted.part().identity().catalog())
						.value("approved", names).build())
				.toList();
	}
}
