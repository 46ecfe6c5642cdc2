/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.SectionReading;
import hullwright.network.Network;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A network has devices, and no supply enters it anywhere.
 */
public final class NoSupply implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/no-supply", "No supply", Severity.ERROR,
				"no supply enters network {network}; devices on it: {devices}",
				"display installation manuals (N2-E): the network needs a fused feed of its own");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			List<SectionReading> sections = SupplySections.of(boat, network);
			List<String> devices = sections.stream().flatMap(each -> each.devices().stream()).toList();
			if (!devices.isEmpty() && sections.stream().allMatch(each -> each.supplies().isEmpty())) {
				Finding.Builder finding = boat.finding(network.origin())
						.value("network", network.origin().simpleName())
						.value("devices", devices.size())
						.covers(devices);
				Set<String> anywhere = boat.figures().sparePortsOf(network).stream().map(port -> port.part().name()).collect(Collectors.toSet());
				FeedThroughPort.of(boat, network, anywhere).forEach(finding::fix);
				findings.add(finding.build());
			}
		}
		return findings;
	}
}
