/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.TerminatorPlace.Where;
import hullwright.network.Backbone;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
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
				.map(terminator -> terminator.finding(boat).value("beyond", terminator.place().beyond().map(PartWords::of).orElseThrow()).build()).toList();
	}
}
