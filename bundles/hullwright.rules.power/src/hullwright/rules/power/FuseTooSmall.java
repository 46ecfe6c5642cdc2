/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.FuseReading;
import hullwright.network.Origin;
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
 * A fuse or breaker carries more than its rating as soon as all devices draw what they may.
 */
public final class FuseTooSmall implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/fuse-too-small", "Fuse smaller than the load", Severity.ERROR,
				"the fuse of {owner} carries {current}; it is rated {limit}",
				"common practice: a fuse carries its load without opening");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		Map<String, Finding> findings = new LinkedHashMap<>();
		for (StateFlow each : StateFlow.lowest(boat)) {
			for (FuseReading fuse : each.flow().fuses()) {
				if (fuse.current().exceeds(fuse.fuse().rating())) {
					Origin owner = places.of(fuse.owner());
					Finding.Builder finding = boat.finding(owner)
							.value("owner", owner.simpleName())
							.value("current", fuse.current())
							.value("limit", fuse.fuse().rating());
					boat.boat().power().supplies().stream().filter(supply -> supply.name().equals(fuse.owner()))
							.forEach(supply -> FuseThatFits.of(boat, supply).forEach(finding::fix));
					findings.putIfAbsent(fuse.owner(), finding.build());
				}
			}
		}
		return List.copyOf(findings.values());
	}
}
