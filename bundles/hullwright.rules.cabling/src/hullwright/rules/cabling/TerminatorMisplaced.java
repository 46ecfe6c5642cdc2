/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.TerminatorPlace.Where;
import hullwright.analysis.line.TerminatorPlace;
import hullwright.network.Backbone;
import hullwright.network.Element;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.InsertInBackbone.Side;
import hullwright.rules.edit.MoveInBackbone;
import java.util.List;

/**
 * A terminator sits between the parts of a backbone, or is built into something in its middle, while an end has none.
 */
public final class TerminatorMisplaced implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/terminator-misplaced", "Terminator in the wrong place", Severity.ERROR,
				"the terminator {part} is not at an end of the backbone: {beyond} lies behind it",
				"public network pages of a display maker (N2-B) and display installation manuals (N2-E): exactly two terminators, one at each end");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return FittedTerminator.of(boat).stream()
				.filter(terminator -> terminator.place().where() == Where.BETWEEN || terminator.place().where() == Where.BUILT_IN && terminator.openEnds() > 0)
				.map(terminator -> finding(boat, terminator)).toList();
	}

	private static Finding finding(BoatUnderCheck boat, FittedTerminator terminator) {
		TerminatorPlace place = terminator.place();
		Finding.Builder finding = terminator.finding(boat).value("beyond", place.beyond().map(PartWords::of).orElse("an open end"));
		place.beyond().ifPresent(beyond -> finding.fix(toTheEnd(terminator.backbone(), place, beyond)));
		return finding.build();
	}

	/** To the end that lies behind it. */
	private static Fix toTheEnd(Backbone backbone, TerminatorPlace place, Element beyond) {
		List<Element> elements = backbone.elements();
		boolean first = elements.indexOf(beyond) < elements.size() / 2 && elements.indexOf(beyond) < at(elements, place);
		Element last = elements.get(first ? 0 : elements.size() - 1);
		return new Fix("Move terminator " + place.origin().simpleName() + " to the " + (first ? "start" : "end") + " of the backbone", Fix.Reach.DESIGN,
				List.of(new MoveInBackbone(place.origin(), last.origin(), first ? Side.BEFORE : Side.AFTER)));
	}

	private static int at(List<Element> elements, TerminatorPlace place) {
		for (int at = 0; at < elements.size(); at++) {
			if (elements.get(at).name().equals(place.origin().element())) {
				return at;
			}
		}
		return -1;
	}
}
