/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.Network;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * More devices are plugged into a network than its drivers can hold. A device counts once, however many addresses it takes.
 */
public final class TooManyNodes implements BoatRule {

	private static final String SOURCE = "public cabling guide of a cable maker (N2-A), section 1.5, and display maker's pages (N2-B): 50 devices on one network";
	private static final Parameter MOST = new Parameter("devices", 50, "how many devices one network may have", SOURCE);

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/too-many-nodes", "Too many devices on a network", Severity.ERROR,
				"{devices} devices are plugged into {network}; one network holds {most}", SOURCE).with(MOST);
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		int most = boat.parameter("devices", Integer.class);
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			int devices = boat.figures().nodesOf(network);
			if (devices > most) {
				findings.add(boat.finding(network.origin())
						.value("devices", devices)
						.value("network", network.origin().simpleName())
						.value("most", most)
						.build());
			}
		}
		return findings;
	}
}
