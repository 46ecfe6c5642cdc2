/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.PowerProblem;
import hullwright.network.PlacesInText;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * No text says what voltage a source gives, so nothing behind it can be computed.
 */
public final class VoltageUnstated implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/voltage-unstated", "Voltage not stated", Severity.WARNING,
				"no text says what voltage {source} gives, so nothing that it feeds can be judged",
				"article of a gateway maker (N2-F): the drawing shows the supply");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		Map<String, Finding> findings = new LinkedHashMap<>();
		boat.figures().electrics().states().stream().flatMap(state -> state.lowest().problems().stream()).forEach(problem -> {
			if (problem instanceof PowerProblem.NoVoltage none) {
				findings.putIfAbsent(none.source(), boat.finding(places.of(none.source())).value("source", ShortName.of(none.source())).build());
			}
		});
		return List.copyOf(findings.values());
	}
}
