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
import java.util.List;

/**
 * The shield of a network is joined to earth nowhere.
 */
public final class ShieldUnearthed implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/shield-unearthed", "Shield earthed nowhere", Severity.WARNING,
				"the shield of {network} is earthed nowhere; it belongs to earth at one place, where the supply enters",
				"kit manual (N2-D), article of a gateway maker (N2-F), DeviceNet manuals (DN-C, DN-H): earth the shield at one point")
				.silencedBy("power/no-supply", "power/shield-earthed-at-device");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return boat.boat().networks().stream()
				.filter(network -> !network.backbones().isEmpty() && ShieldEarths.of(network).isEmpty())
				.map(network -> boat.finding(network.origin()).value("network", network.origin().simpleName()).build()).toList();
	}
}
