/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.DeviceReading;
import hullwright.analysis.power.PowerProblem;
import hullwright.network.Origin;
import hullwright.network.PlacesInText;
import hullwright.quantity.Ratio;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The loads of a network ask for more than its cables can bring: the voltage breaks down.
 */
public final class CannotBeFed implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/cannot-be-fed", "Loads cannot be fed", Severity.ERROR,
				"the voltage breaks down at {device}: {share} of all loads can be fed",
				"follows from the laws of circuits with the catalog's figures");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		Map<String, Finding> findings = new LinkedHashMap<>();
		for (StateFlow each : StateFlow.lowest(boat)) {
			for (PowerProblem problem : each.flow().problems()) {
				if (problem instanceof PowerProblem.CannotBeFed broken) {
					Origin device = places.of(broken.device());
					findings.putIfAbsent(broken.device(), boat.finding(device)
							.value("device", device.simpleName())
							.value("share", new Ratio(broken.share()))
							.covers(each.flow().devices().stream().map(DeviceReading::device).toList())
							.build());
				}
			}
		}
		return List.copyOf(findings.values());
	}
}
