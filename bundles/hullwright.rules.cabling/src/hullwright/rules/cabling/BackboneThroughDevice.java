/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.Backbone;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.part.DeviceModel;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A backbone goes in at one connector of a device and out at another.
 */
public final class BackboneThroughDevice implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/backbone-through-device", "Backbone through a device", Severity.WARNING,
				"the backbone goes through {device}: who takes it out parts the network",
				"public cabling guide of a cable maker (N2-A) and installation manual of an autopilot computer (N2-P): no chain from device to device");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Backbone backbone : network.backbones()) {
				// a device at the very end closes it, it passes nothing on
				for (int at = 1; at < backbone.elements().size() - 1; at++) {
					Element element = backbone.elements().get(at);
					if (element instanceof Fitting fitting && fitting.part() instanceof DeviceModel) {
						findings.add(boat.finding(fitting.origin()).value("device", fitting.origin().simpleName()).build());
					}
				}
			}
		}
		return findings;
	}
}
