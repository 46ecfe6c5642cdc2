/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.TerminatorPlace.Where;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
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
		return FittedTerminator.of(boat).stream().filter(terminator -> terminator.place().where() == Where.ON_PORT)
				.map(terminator -> terminator.finding(boat).build()).toList();
	}
}
