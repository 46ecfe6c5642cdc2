/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.Backbone;
import hullwright.network.Join;
import hullwright.network.Network;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A network has more than one backbone: a star, a branch, or two lines that hear nothing of each other.
 */
public final class SeveralBackbones implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/several-backbones", "More than one backbone in a network", Severity.ERROR,
				"{network} has {backbones} backbones; a network is one line with two ends, or two networks with a bridge between",
				"public cabling guide of a cable maker (N2-A) and small-network leaflet (N2-K): a linear backbone, no star and no long branch");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			List<Backbone> backbones = network.backbones();
			if (backbones.size() > 1) {
				Set<String> covered = new LinkedHashSet<>(List.of(network.name()));
				backbones.stream().map(Backbone::name).forEach(covered::add);
				network.joins().stream().map(Join::name).forEach(covered::add);
				findings.add(boat.finding(backbones.get(1).origin())
						.value("network", network.origin().simpleName())
						.value("backbones", backbones.size())
						.covers(covered)
						.build());
			}
		}
		return findings;
	}
}
