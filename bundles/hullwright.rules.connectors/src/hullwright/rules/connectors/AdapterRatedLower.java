/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.WeakAdapter;
import hullwright.network.Network;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * An adapter may carry less than what is on both sides of it.
 */
public final class AdapterRatedLower implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/adapter-rated-lower", "Adapter rated lower", Severity.WARNING,
				"adapter {adapter} may carry {rated}, and what is on both sides of it {around}",
				"common practice: a part in a run carries what the run carries, since one fuse protects all of it");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (WeakAdapter weak : WeakAdapter.of(network)) {
				// a drop carries what one device draws; a backbone what all of them do
				Finding.Builder finding = weak.drop().map(drop -> boat.advice(drop.shownAt(weak.adapter().origin())).key("adapter"))
						.orElseGet(() -> boat.finding(weak.adapter().origin()));
				findings.add(finding
						.value("adapter", weak.adapter().part().identity().name())
						.value("rated", weak.rated())
						.value("around", weak.around())
						.build());
			}
		}
		return findings;
	}
}
