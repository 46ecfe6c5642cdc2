/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.wiring.SupplyEntry;
import hullwright.network.Network;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.Reword;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The shield of a network is joined to earth nowhere.
 */
public final class ShieldUnearthed implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/shield-unearthed", "Shield earthed nowhere", Severity.WARNING,
				"the shield of {network} is earthed nowhere; it belongs to earth at one place",
				"kit manual (N2-D), article of a gateway maker (N2-F), DeviceNet manuals (DN-C, DN-H): earth the shield at one point")
				.silencedBy("power/shield-earthed-at-device");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Set<Integer> fed = boat.figures().electrics().wiring().entries().stream().map(SupplyEntry::network).collect(Collectors.toSet());
		List<Finding> findings = new ArrayList<>();
		for (int number = 0; number < boat.boat().networks().size(); number++) {
			Network network = boat.boat().networks().get(number);
			if (fed.contains(number) && ShieldEarths.of(network).isEmpty()) {
				Finding.Builder finding = boat.finding(network.origin()).value("network", network.origin().simpleName());
				int index = number;
				boat.figures().electrics().wiring().entries().stream().filter(entry -> entry.network() == index).findFirst()
						.ifPresent(entry -> finding.fix(new Fix("Earth the shield at " + ShortName.of(entry.part()) + ", where the supply enters", Fix.Reach.DESIGN,
								List.of(new Reword(entry.origin(), "", "earths shield")))));
				findings.add(finding.build());
			}
		}
		return findings;
	}
}
