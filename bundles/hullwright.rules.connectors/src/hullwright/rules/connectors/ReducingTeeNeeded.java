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
 * A light drop or cord is plugged into the heavy port of a heavy tee.
 */
public final class ReducingTeeNeeded implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/reducing-tee-needed", "Reducing tee needed", Severity.ERROR,
				"port {port} ends in {portEnd} and {far} in {farEnd}: a light branch on a heavy backbone needs a reducing tee",
				"public network pages of a display maker (N2-B), p. 12: a mini backbone with micro drops needs a reducing tee");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return Misfit.HEAVY_PORT.on(boat).stream().map(joint -> finding(boat, joint)).toList();
	}

	private static Finding finding(BoatUnderCheck boat, Joint joint) {
		Finding.Builder finding = boat.finding(joint.run().shownAt(joint.far().origin()))
				.value("port", joint.near().label())
				.value("portEnd", joint.near().connector().orElseThrow())
				.value("far", joint.far().label())
				.value("farEnd", joint.far().connector().orElseThrow());
		JointFixes.of(boat, joint).addTeeTo(finding);
		return finding.build();
	}
}
