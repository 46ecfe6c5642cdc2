/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.ClosedLoops;
import hullwright.network.Element;
import hullwright.network.Join;
import hullwright.network.Network;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.Remove;
import java.util.ArrayList;
import java.util.List;

/**
 * A cable joins what is joined already, so that the backbone runs in a circle.
 */
public final class Loop implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/loop", "Loop in the network", Severity.ERROR,
				"this cable from {from} to {to} closes a loop; a backbone has two ends",
				"public cabling guide of a cable maker (N2-A) and small-network leaflet (N2-K): one line from end to end; no loops is common practice");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Join join : ClosedLoops.of(network)) {
				findings.add(boat.finding(join.origin())
						.covers(join.legs().stream().map(Element::name).toList())
						.value("from", JoinWords.of(join.from()))
						.value("to", JoinWords.of(join.to()))
						.fix(new Fix("Remove the cable that closes the loop", Fix.Reach.DESIGN, List.of(new Remove(join.origin()))))
						.build());
			}
		}
		return findings;
	}
}
