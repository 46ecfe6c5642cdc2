/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.TerminatorPlace.Where;
import hullwright.network.Backbone;
import hullwright.network.Element;
import hullwright.network.Origin;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.InsertInBackbone.Side;
import hullwright.rules.edit.MoveInBackbone;
import hullwright.rules.edit.Remove;
import java.util.List;

/**
 * Parts of a backbone lie behind an in-line terminator, which is for the last device only.
 */
public final class BeyondTerminator implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/beyond-terminator", "Backbone goes on behind a terminator", Severity.ERROR,
				"{beyond} lies behind the in-line terminator {part}; only its device may",
				"public network pages of a display maker (N2-B), p. 11: the in-line terminator stands before the last device");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return FittedTerminator.of(boat).stream().filter(terminator -> terminator.place().where() == Where.IN_LINE_BETWEEN)
				.map(terminator -> finding(boat, terminator)).toList();
	}

	private static Finding finding(BoatUnderCheck boat, FittedTerminator terminator) {
		Element beyond = terminator.place().beyond().orElseThrow();
		Origin place = terminator.place().origin();
		List<Element> elements = terminator.backbone().elements();
		boolean towardsStart = elements.indexOf(beyond) < elements.size() - 1 && elements.get(elements.indexOf(beyond) + 1).name().equals(place.element());
		Element last = elements.get(towardsStart ? 0 : elements.size() - 1);
		return terminator.finding(boat).value("beyond", PartWords.of(beyond))
				.fix(terminator.openEnds() == 0
						? new Fix("Take terminator " + place.simpleName() + " out", Fix.Reach.DESIGN, List.of(new Remove(place)))
						: new Fix("Move terminator " + place.simpleName() + " to the end of the backbone", Fix.Reach.DESIGN,
								List.of(new MoveInBackbone(place, last.origin(), towardsStart ? Side.BEFORE : Side.AFTER))))
				.build();
	}
}
