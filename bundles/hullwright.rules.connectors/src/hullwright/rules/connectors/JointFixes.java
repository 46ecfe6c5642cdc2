/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.Joint;
import hullwright.analysis.wiring.Joint.Side;
import hullwright.network.PartsOnOffer;
import hullwright.network.part.Adapter;
import hullwright.network.part.Connector;
import hullwright.network.part.Part;
import hullwright.network.part.Tee;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplacePart;
import java.util.List;
import java.util.Optional;

/**
 * What could be done about a joint that does not mate.
 */
final class JointFixes {

	private final PartsOnOffer offer;
	private final List<Joint> run;
	private final Joint joint;

	private JointFixes(PartsOnOffer offer, List<Joint> run, Joint joint) {
		this.offer = offer;
		this.run = run;
		this.joint = joint;
	}

	/** Those of a joint of this boat. */
	static JointFixes of(BoatUnderCheck boat, Joint joint) {
		List<Joint> run = boat.boat().networks().stream().flatMap(network -> boat.figures().jointsOf(network).stream())
				.filter(each -> each.run().equals(joint.run())).toList();
		return new JointFixes(boat.boat().partsOnOffer(), run, joint);
	}

	/** Adds another part of the same kind, an adapter, and another tee, as far as the catalogs offer them. */
	void addTo(Finding.Builder finding) {
		if (joint.kind() == Joint.Kind.JOIN) {
			return;
		}
		otherPart().ifPresent(finding::fix);
		if (isMisfitOnBothSides()) {
			return;
		}
		AdapterForJoint.fix(offer, joint).ifPresent(finding::fix);
		otherTee().ifPresent(finding::fix);
	}

	private Optional<Fix> otherPart() {
		return otherPartAt(joint.far()).or(() -> otherPartAt(joint.near()));
	}

	/** Another part of the same kind with the right connectors, in the place of one of the two. */
	Optional<Fix> otherPartAt(Side side) {
		return side.equals(joint.far()) ? replace(side, joint.near().connector(), beyond(side)) : replace(side, joint.far().connector(), before(side));
	}

	/** Adds a tee with a port that the branch fits, and an adapter. */
	void addTeeTo(Finding.Builder finding) {
		otherTee().ifPresent(finding::fix);
		AdapterForJoint.fix(offer, joint).ifPresent(finding::fix);
	}

	private Optional<Fix> otherTee() {
		boolean branches = joint.kind() == Joint.Kind.DROP || joint.kind() == Joint.Kind.FEED;
		if (!branches || joint.near().port().isEmpty() || !(joint.near().part().orElse(null) instanceof Tee tee)) {
			return Optional.empty();
		}
		return PartWithOtherEnds.withPort(offer, tee, joint.near().port().get(), joint.far().connector()).map(other -> fix(joint.near(), tee, other));
	}

	private Optional<Fix> replace(Side side, Optional<Connector> neighbour, Optional<Connector> beyond) {
		return side.part().filter(part -> !(part instanceof Adapter) && !isPort(side))
				.flatMap(part -> PartWithOtherEnds.between(offer, part, neighbour, beyond).map(other -> fix(side, part, other)));
	}

	private boolean isPort(Side side) {
		return joint.kind() != Joint.Kind.BACKBONE && side.part().filter(Tee.class::isInstance).isPresent();
	}

	private static Fix fix(Side side, Part old, Part part) {
		return new Fix("Replace " + old.identity().name() + " by " + part.identity().name(), Fix.Reach.DESIGN,
				List.of(new ReplacePart(side.origin(), old.identity(), part.identity())));
	}

	private boolean isMisfitOnBothSides() {
		return run.stream().anyMatch(each -> each.near().origin().equals(joint.far().origin()) && !each.mates());
	}

	private Optional<Connector> beyond(Side side) {
		return run.stream().filter(each -> each.near().origin().equals(side.origin())).findFirst().flatMap(each -> each.far().connector());
	}

	private Optional<Connector> before(Side side) {
		return run.stream().filter(each -> each.far().origin().equals(side.origin())).findFirst().flatMap(each -> each.near().connector());
	}
}
