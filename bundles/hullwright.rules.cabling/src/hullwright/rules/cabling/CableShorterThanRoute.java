/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.layout.Way;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A cable that is fitted does not reach along the way that it has to take.
 */
public final class CableShorterThanRoute implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/cable-shorter-than-route", "Cable shorter than its way", Severity.ERROR,
				"{cable} is {length} long and has to reach {limit}",
				"the text: the way that the cable has to reach");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			network.backbones().forEach(backbone -> look(boat, backbone.elements(), findings));
			network.drops().forEach(drop -> look(boat, drop.legs(), findings));
			network.feeds().forEach(feed -> look(boat, feed.legs(), findings));
			network.joins().forEach(join -> look(boat, join.legs(), findings));
		}
		return findings;
	}

	private static void look(BoatUnderCheck boat, List<Element> run, List<Finding> findings) {
		for (Element element : run) {
			if (element instanceof CableRun cable && cable.way().map(Way::length).filter(way -> way.exceeds(cable.length())).isPresent()) {
				Way way = cable.way().get();
				findings.add(boat.finding(cable.origin())
						.value("cable", "the cable" + way.route().map(route -> " along " + route).orElse(""))
						.value("length", cable.length())
						.value("limit", way.length())
						.build());
			}
		}
	}
}
