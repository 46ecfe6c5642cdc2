/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.Termination;
import hullwright.network.Backbone;
import hullwright.network.Element;
import hullwright.network.Network;
import hullwright.network.part.Connector;
import hullwright.network.part.Terminator;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.AddToBackbone;
import hullwright.rules.edit.AddToBackbone.End;
import hullwright.rules.edit.Fix;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * An end of a backbone has no terminator.
 */
public final class TerminatorMissing implements BoatRule {

	private static final int NEEDED = 2;

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/terminator-missing", "Terminator missing", Severity.ERROR,
				"no terminator at the {end} of the backbone, beyond {neighbour}: {fitted} fitted, {needed} needed",
				"public network pages of a display maker (N2-B) and display installation manuals (N2-E): one 120 ohm terminator at each end")
				.silencedBy("cabling/terminator-misplaced", "cabling/beyond-terminator", "cabling/terminator-on-drop", "cabling/several-backbones");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Backbone backbone : network.backbones()) {
				if (!backbone.elements().isEmpty()) {
					check(boat, network, backbone, findings);
				}
			}
		}
		return findings;
	}

	private static void check(BoatUnderCheck boat, Network network, Backbone backbone, List<Finding> findings) {
		Termination termination = boat.figures().terminationOf(network, backbone);
		int fitted = boat.figures().terminatorsOf(network, backbone).size();
		List<Element> elements = backbone.elements();
		if (termination.start().isEmpty()) {
			findings.add(finding(boat, backbone, End.START, elements.get(0), fitted, termination.openAtStart()));
		}
		if (termination.end().isEmpty()) {
			findings.add(finding(boat, backbone, End.END, elements.get(elements.size() - 1), fitted, termination.openAtEnd()));
		}
	}

	private static Finding finding(BoatUnderCheck boat, Backbone backbone, End end, Element neighbour, int fitted,
			Optional<Connector> open) {
		String which = end.name().toLowerCase(Locale.ROOT);
		Finding.Builder finding = boat.finding(backbone.origin().shownAt(neighbour.origin()))
				.key(which)
				.value("end", which)
				.value("neighbour", PartWords.of(neighbour))
				.value("fitted", fitted)
				.value("needed", NEEDED);
		open.flatMap(connector -> MatingPart.terminator(boat.boat().partsOnOffer(), connector))
				.ifPresent(terminator -> finding.fix(fix(backbone, end, which, terminator)));
		return finding.build();
	}

	private static Fix fix(Backbone backbone, End end, String which, Terminator terminator) {
		return new Fix("Add terminator " + terminator.identity().name() + " at the " + which + " of the backbone", Fix.Reach.DESIGN,
				List.of(new AddToBackbone(backbone.origin(), end, "terminator", which + "Terminator", terminator.identity())));
	}
}
