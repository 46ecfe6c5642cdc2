/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.TerminatorPlace;
import hullwright.analysis.line.TerminatorPlace.Where;
import hullwright.network.Backbone;
import hullwright.network.Network;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A terminator is plugged into a port that is meant for a drop.
 */
public final class TerminatorOnDrop implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/terminator-on-drop", "Terminator on a drop port", Severity.ERROR,
				"the terminator {part} is on a port for a drop; terminators belong at the two ends of the backbone",
				"owner's manual of a control system (N2-J), p. 29: never terminate a drop; cap spare ports");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Backbone backbone : network.backbones()) {
				int open = OpenEnds.of(boat, network, backbone);
				for (TerminatorPlace place : boat.figures().terminatorsOf(network, backbone)) {
					if (place.where() == Where.ON_PORT) {
						findings.add(finding(boat, backbone, place, open));
					}
				}
			}
		}
		return findings;
	}

	private static Finding finding(BoatUnderCheck boat, Backbone backbone, TerminatorPlace place, int open) {
		Finding.Builder finding = boat.finding(place.origin()).value("part", PartWords.of(place));
		if (open == 1) {
			finding.covers(List.of(backbone.name()));
		}
		return finding.build();
	}
}
