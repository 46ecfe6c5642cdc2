/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.Assumption;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The catalog does not say what a device draws from the network, so that every sum lacks it. Told once for a kind of device.
 */
public final class LoadUnknown implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/load-unknown", "Load unknown", Severity.WARNING,
				"the catalog does not say what {model} draws from the network, so nothing is counted for {device}",
				"article of a gateway maker (N2-F): the drawing shows the load of every device");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Set<String> unknown = new LinkedHashSet<>();
		boat.figures().electrics().states().stream().flatMap(state -> state.lowest().assumptions().stream())
				.filter(assumption -> assumption.kind() == Assumption.Kind.LOAD).forEach(assumption -> unknown.addAll(assumption.subjects()));
		Map<String, Finding> findings = new LinkedHashMap<>();
		boat.boat().fittedDevices().stream().filter(device -> unknown.contains(device.name())).forEach(device -> {
			String model = device.model().identity().name();
			findings.putIfAbsent(model, boat.finding(device.origin()).value("model", model).value("device", ShortName.of(device.name())).build());
		});
		return List.copyOf(findings.values());
	}
}
