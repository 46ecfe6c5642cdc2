/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.Joint;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;

/**
 * A terminator does not plug into what is beside it.
 */
public final class TerminatorDoesNotFit implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/terminator-does-not-fit", "Terminator does not fit", Severity.ERROR,
				"terminator {terminator} ends in {end} and does not fit {neighbour}, which ends in {neighbourEnd}",
				"public cabling guide of a cable maker (N2-A) and display maker's pages (N2-B): one end of a backbone takes pins, the other sockets");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return Misfit.TERMINATOR.on(boat).stream().map(joint -> finding(boat, joint)).toList();
	}

	private static Finding finding(BoatUnderCheck boat, Joint joint) {
		Joint.Side terminator = joint.far().isTerminator() ? joint.far() : joint.near();
		Joint.Side neighbour = joint.far().isTerminator() ? joint.near() : joint.far();
		Finding.Builder finding = boat.finding(terminator.origin())
				.value("terminator", terminator.label())
				.value("end", terminator.connector().orElseThrow())
				.value("neighbour", neighbour.label())
				.value("neighbourEnd", neighbour.connector().orElseThrow());
		JointFixes.of(boat, joint).otherPartAt(terminator).ifPresent(finding::fix);
		return finding.build();
	}
}
