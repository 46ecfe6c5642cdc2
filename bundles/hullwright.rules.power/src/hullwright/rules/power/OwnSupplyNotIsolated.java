/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A device has a supply of its own that is not isolated from the network.
 */
public final class OwnSupplyNotIsolated implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/own-supply-not-isolated", "Own supply not isolated", Severity.WARNING,
				"{device} has a supply of its own that is not isolated from {network}",
				"article of a gateway maker (N2-F) and cable maker's FAQ: devices with other power are isolated from the network supply");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		Set<String> told = new HashSet<>();
		boat.figures().electrics().wiring().devices().stream()
				.filter(each -> each.device().model().power().ownSupply().filter(supply -> !supply.isolated()).isPresent())
				.filter(each -> told.add(each.device().name()))
				.forEach(each -> findings.add(boat.finding(each.device().origin())
						.value("device", ShortName.of(each.device().name()))
						.value("network", ShortName.of(boat.boat().networks().get(each.network()).name()))
						.build()));
		return findings;
	}
}
