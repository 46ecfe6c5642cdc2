/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.part.Tee;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A tee or a block lies on a drop instead of in the backbone.
 */
public final class BlockOnDrop implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/block-on-drop", "Block or tee on a drop", Severity.WARNING,
				"{part} lies on a drop, so that one branch of the line divides into several",
				"public cabling guide of a cable maker (N2-A) and old leaflet of a small network (N2-K): keep the chain linear; DeviceNet allows branching drops, from memory");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Drop drop : network.drops()) {
				for (Element leg : drop.legs()) {
					if (leg instanceof Fitting fitting && fitting.part() instanceof Tee) {
						findings.add(boat.finding(fitting.origin())
								.value("part", fitting.origin().simpleName().startsWith("leg-") ? fitting.part().identity().name() : fitting.origin().simpleName())
								.build());
					}
				}
			}
		}
		return findings;
	}
}
