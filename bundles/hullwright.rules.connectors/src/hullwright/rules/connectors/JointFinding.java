/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.Joint;
import hullwright.network.Origin;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;

/**
 * What the rules about a joint say of it: which element it is about, and the values that their messages name.
 */
final class JointFinding {

	private JointFinding() {
	}

	/**
	 * A finding about a joint: about the element behind it in a backbone, and about the whole branch in a drop, a feed or a join.
	 */
	static Finding.Builder of(BoatUnderCheck boat, Joint joint) {
		boolean ofBranch = joint.kind() == Joint.Kind.DROP || joint.kind() == Joint.Kind.FEED || joint.kind() == Joint.Kind.JOIN;
		Origin place = joint.far().origin();
		Finding.Builder finding = ofBranch ? boat.finding(joint.run().shownAt(place)).key("joint " + (joint.position() + 1)) : boat.finding(place);
		return finding
				.value("near", joint.near().label())
				.value("nearEnd", joint.near().connector().orElseThrow())
				.value("far", joint.far().label())
				.value("farEnd", joint.far().connector().orElseThrow());
	}

	/** Such a finding with what could be done about it. */
	static Finding withFixes(BoatUnderCheck boat, Joint joint) {
		Finding.Builder finding = of(boat, joint);
		JointFixes.of(boat, joint).addTo(finding);
		return finding.build();
	}
}
