/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;

/**
 * Two connectors of one family and of the same gender meet: pins on pins, or sockets on sockets.
 */
public final class GendersDoNotMate implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/genders-do-not-mate", "Pins meet pins", Severity.ERROR,
				"{near} and {far} do not mate: both end in {nearEnd}",
				"public cabling guide of a cable maker (N2-A) and display maker's pages (N2-B): every backbone cable has one end with pins and one with sockets")
				.silencedBy("cabling/loop");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return Misfit.GENDERS.on(boat).stream().map(joint -> JointFinding.withFixes(boat, joint)).toList();
	}
}
