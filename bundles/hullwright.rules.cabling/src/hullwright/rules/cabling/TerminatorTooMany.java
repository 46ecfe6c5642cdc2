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
 * A backbone that is terminated at both ends has a third resistor across the signal pair, built into a device or a cord.
 */
public final class TerminatorTooMany implements BoatRule {

	private static final int ALLOWED = 2;

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/terminator-too-many", "Terminator too many", Severity.ERROR,
				"{part} has a terminator built in, and both ends of the backbone are terminated: {fitted} fitted, {allowed} allowed",
				"public network pages of a display maker (N2-B) and display installation manuals (N2-E): exactly two terminators, one at each end; installers' symptom list: 40 ohm and less across the pair (common practice)");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return FittedTerminator.of(boat).stream().filter(terminator -> terminator.openEnds() == 0 && terminator.place().where() == Where.BUILT_IN)
				.map(terminator -> terminator.finding(boat).value("fitted", terminator.fitted()).value("allowed", ALLOWED).build()).toList();
	}
}
