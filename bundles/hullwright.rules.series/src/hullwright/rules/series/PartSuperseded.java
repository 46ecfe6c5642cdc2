/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.network.FittedPart;
import hullwright.network.part.Part;
import hullwright.network.part.PartIdentity;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplacePart;
import java.util.List;

/**
 * A part is fitted that is no longer bought: its catalog names another in its place. Told once for a part.
 */
public final class PartSuperseded implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/part-superseded", "Part has a successor", Severity.WARNING,
				"{element} is a {part}, in whose place {successor} is bought",
				"common practice: new hulls get the part that can be bought");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return FirstOfEach.part(boat.boat(), part -> part.identity().successor().isPresent()).map(fitted -> finding(boat, fitted)).toList();
	}

	private static Finding finding(BoatUnderCheck boat, FittedPart fitted) {
		PartIdentity part = fitted.part().identity();
		String successor = part.successor().orElseThrow();
		Finding.Builder finding = boat.finding(fitted.place())
				.value("element", fitted.place().simpleName())
				.value("part", part.name())
				.value("successor", successor.substring(successor.lastIndexOf('.') + 1));
		boat.boat().partsOnOffer().parts().stream().map(Part::identity)
				.filter(each -> successor.equals(each.catalog() + "." + each.name())).findFirst()
				.ifPresent(each -> finding.fix(new Fix("Fit " + each.name() + " in place of " + part.name(), Fix.Reach.DESIGN,
						List.of(new ReplacePart(fitted.place(), part, each)))));
		return finding.build();
	}
}
