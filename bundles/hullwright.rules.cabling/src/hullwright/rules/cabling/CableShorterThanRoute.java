/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetLength;
import java.util.List;

/**
 * A cable that is fitted does not reach along the way that it has to take.
 */
public final class CableShorterThanRoute implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/cable-shorter-than-route", "Cable shorter than its way", Severity.ERROR,
				"{cable} is {length} long and has to reach {limit}",
				"the text: the way that the cable has to reach").silencedBy("cabling/no-stock-length-reaches");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return CableOnItsWay.of(boat.boat()).stream().filter(CableOnItsWay::isTooShort).map(cable -> finding(boat, cable)).toList();
	}

	private static Finding finding(BoatUnderCheck boat, CableOnItsWay each) {
		Finding.Builder finding = boat.finding(each.cable().origin())
				.value("cable", each.label())
				.value("length", each.cable().length())
				.value("limit", each.way().length());
		each.shortestThatReaches().ifPresent(length -> finding.fix(new Fix("Fit " + length + ", the shortest that is sold and reaches", Fix.Reach.DESIGN,
				List.of(new SetLength(each.cable().origin(), each.cable().length(), length)))));
		return finding.build();
	}
}
