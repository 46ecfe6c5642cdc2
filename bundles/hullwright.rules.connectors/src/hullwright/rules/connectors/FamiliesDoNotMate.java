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
 * Connectors of two families meet.
 */
public final class FamiliesDoNotMate implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/families-do-not-mate", "Connector families do not mate", Severity.ERROR,
				"{near} ends in {nearEnd} and {far} in {farEnd}: two families, which do not mate",
				"common practice: a family mates with itself only, an adapter changes it");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return Misfit.FAMILIES.on(boat).stream().map(joint -> JointFinding.withFixes(boat, joint)).toList();
	}
}
