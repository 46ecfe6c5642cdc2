/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Demand;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;

/**
 * The house wants to know where every device or part is, and of one the text does not say.
 */
public final class PlaceMissing implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/place-missing", "Place missing", Severity.WARNING,
				"nothing says where {element} is", "the profile: what it requires");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return new SaidOfEvery(boat, Demand.What.PLACE)
				.devices(device -> device.place().isEmpty(), device -> boat.finding(device.origin()).value("element", device.origin().simpleName()))
				.fittings(fitting -> fitting.details().place().isEmpty() && fitting.details().bulkhead().isEmpty())
				.findings();
	}
}
