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
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A device joins the shield of its network to earth.
 */
public final class ShieldEarthedAtDevice implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/shield-earthed-at-device", "Shield earthed at a device", Severity.WARNING,
				"{device} joins the shield to earth; the shield is isolated at devices",
				"kit manual (N2-D), DeviceNet manuals (DN-C, DN-H): the shield is earthed at one point and isolated at devices");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		Set<String> onNetworks = boat.figures().electrics().wiring().devices().stream().map(each -> each.device().name()).collect(Collectors.toSet());
		boat.boat().fittedDevices().stream().filter(device -> device.model().earthsShield() && onNetworks.contains(device.name()))
				.forEach(device -> findings.add(boat.finding(device.origin()).value("device", ShortName.of(device.name())).build()));
		return findings;
	}
}
