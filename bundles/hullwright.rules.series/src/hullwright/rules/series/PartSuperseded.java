/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.network.Backbone;
import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.part.Part;
import hullwright.network.part.PartIdentity;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplacePart;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A part is fitted that is no longer bought: its catalog names another in its place. Told once for a part.
 */
public final class PartSuperseded implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/part-superseded", "Part has a successor", Severity.WARNING,
				"{element} is a {part}, in whose place {successor} is bought",
				"common practice: new hulls get the part that can be bought");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Map<String, Finding> findings = new LinkedHashMap<>();
		for (Network network : boat.boat().networks()) {
			for (Backbone backbone : network.backbones()) {
				backbone.elements().forEach(element -> look(boat, element, findings));
			}
			network.drops().forEach(drop -> drop.legs().forEach(leg -> look(boat, leg, findings)));
			network.feeds().forEach(feed -> feed.legs().forEach(leg -> look(boat, leg, findings)));
		}
		boat.boat().fittedDevices().forEach(device -> look(boat, device.origin(), device.model().identity(), findings));
		return List.copyOf(findings.values());
	}

	private static void look(BoatUnderCheck boat, Element element, Map<String, Finding> findings) {
		if (element instanceof Fitting fitting) {
			look(boat, element.origin(), fitting.part().identity(), findings);
		} else if (element instanceof CableRun run) {
			run.cable().ifPresent(cable -> look(boat, element.origin(), cable.identity(), findings));
		}
	}

	private static void look(BoatUnderCheck boat, Origin place, PartIdentity part, Map<String, Finding> findings) {
		part.successor().filter(successor -> !findings.containsKey(part.catalog() + "." + part.name())).ifPresent(successor -> {
			Finding.Builder finding = boat.finding(place)
					.value("element", place.simpleName())
					.value("part", part.name())
					.value("successor", successor.substring(successor.lastIndexOf('.') + 1));
			boat.boat().partsOnOffer().parts().stream().map(Part::identity)
					.filter(each -> successor.equals(each.catalog() + "." + each.name())).findFirst()
					.ifPresent(each -> finding.fix(new Fix("Fit " + each.name() + " in place of " + part.name(), Fix.Reach.DESIGN, List.of(new ReplacePart(place, part, each)))));
			findings.put(part.catalog() + "." + part.name(), finding.build());
		});
	}
}
