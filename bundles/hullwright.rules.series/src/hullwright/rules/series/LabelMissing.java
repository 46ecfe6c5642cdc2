/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.network.FittedDevice;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Demand;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.List;

/**
 * The house wants a label on every device, part or feed, and one has none.
 */
public final class LabelMissing implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/label-missing", "Label missing", Severity.WARNING,
				"{element} has no label", "the profile: what it requires");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return new SaidOfEvery(boat, Demand.What.LABEL)
				.devices(device -> device.label().isEmpty(), device -> finding(boat, device))
				.fittings(fitting -> fitting.details().label().isEmpty())
				.feeds(feed -> feed.label().isEmpty())
				.findings();
	}

	private static Finding.Builder finding(BoatUnderCheck boat, FittedDevice device) {
		String name = device.origin().simpleName();
		return boat.finding(device.origin()).value("element", name)
				.fix(new Fix("Write its name on the label of " + name, Fix.Reach.DESIGN,
						List.of(new SetProperty(device.origin(), "label", "\"" + name + "\""))));
	}
}
