/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.Joint;
import hullwright.network.Network;
import hullwright.network.part.Adapter;
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
 * Two parts would mate without the adapter between them.
 */
public final class AdapterChangesNothing implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/adapter-changes-nothing", "Adapter that changes nothing", Severity.ADVICE,
				"adapter {adapter} changes nothing: {near} and {far} mate without it",
				"common practice: every joint that is not needed is one more to fail");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			List<Joint> joints = boat.figures().jointsOf(network);
			for (int at = 1; at < joints.size(); at++) {
				Joint before = joints.get(at - 1);
				Joint after = joints.get(at);
				// an adapter that holds the supply back changes something
				if (before.far().origin().equals(after.near().origin()) && after.near().part().orElse(null) instanceof Adapter adapter
						&& adapter.carriesPower() && matesAcross(before, after)) {
					boolean inBackbone = after.kind() == Joint.Kind.BACKBONE;
					findings.add((inBackbone ? boat.finding(after.near().origin()) : boat.finding(after.run().shownAt(after.near().origin())).key("adapter"))
							.value("adapter", adapter.identity().name())
							.value("near", before.near().label())
							.value("far", after.far().label())
							.fix(new Fix("Take adapter " + adapter.identity().name() + " out", Fix.Reach.DESIGN, List.of(new Remove(after.near().origin()))))
							.build());
				}
			}
		}
		return findings;
	}

	private static boolean matesAcross(Joint before, Joint after) {
		return before.near().connector().isPresent() && after.far().connector().filter(before.near().connector().get()::mates).isPresent();
	}
}
