/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.LineFigures;
import hullwright.analysis.line.LineProblem;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.PlacesInText;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * Something without resistance lies across the signal pair, so that no device hears another.
 */
public final class PairShorted implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/pair-shorted", "Signal pair shorted", Severity.ERROR,
				"{part} lies across the signal pair without resistance, so that {network} carries no signal",
				"installers' symptom list: a few ohm across the pair and nothing on the bus (common practice)");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (int number = 0; number < boat.boat().networks().size(); number++) {
			Network network = boat.boat().networks().get(number);
			LineFigures line = boat.figures().lines().get(number);
			for (LineProblem problem : line.problems()) {
				if (problem instanceof LineProblem.Shorted shorted) {
					String part = shorted.by().get(0);
					Origin place = new PlacesInText(boat.boat()).of(part);
					findings.add(boat.finding(place)
							.value("part", place.simpleName())
							.value("network", network.origin().simpleName())
							.covers(shorted.by())
							.build());
				}
			}
		}
		return findings;
	}
}
