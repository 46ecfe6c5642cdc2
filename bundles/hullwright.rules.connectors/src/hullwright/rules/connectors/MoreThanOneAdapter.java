/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.Joint;
import hullwright.network.Drop;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.part.Adapter;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A drop changes the connector family more than once.
 */
public final class MoreThanOneAdapter implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/more-than-one-adapter", "More than one adapter in a drop", Severity.ADVICE,
				"the drop to {end} has {count} adapters; {limit} should do",
				"common practice: at most one adapter in a drop, at the tee; public cabling guide of a cable maker (N2-A): adapters count in the length of the drop")
				.with(new Parameter("adapters", 1, "how many adapters a drop may have", "common practice"));
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Drop drop : network.drops()) {
				long count = drop.legs().stream().filter(leg -> leg instanceof Fitting fitting && fitting.part() instanceof Adapter).count();
				if (count > boat.parameter("adapters", Integer.class)) {
					Finding.Builder finding = boat.finding(drop.origin())
							.value("end", drop.origin().simpleName())
							.value("count", (int) count)
							.value("limit", boat.parameter("adapters", Integer.class));
					List<Joint> joints = boat.figures().jointsOf(network).stream().filter(joint -> joint.run().equals(drop.origin())).toList();
					FewerAdapters.fix(boat.boat().partsOnOffer(), drop, joints).ifPresent(finding::fix);
					findings.add(finding.build());
				}
			}
		}
		return findings;
	}
}
