/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.network.Network;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * Something is plugged into a part that an option or a hull leaves out.
 */
public final class PartNotFitted implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/part-not-fitted", "Plugged into a part that is not fitted", Severity.ERROR,
				"{what} goes to {part}, which this boat does not have",
				"common practice: what goes with an option takes what hangs on it along");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (PortClaim claim : PortClaim.of(network)) {
				if (claim.part().isEmpty()) {
					findings.add(boat.finding(claim.origin()).key(claim.partName())
							.value("what", claim.kind())
							.value("part", claim.partName())
							.build());
				}
			}
		}
		return findings;
	}
}
