/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.Joint;
import hullwright.network.PartsOnOffer;
import hullwright.network.part.Adapter;
import hullwright.network.part.Connector;
import hullwright.network.part.Ends;
import hullwright.quantity.Length;
import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.InsertInBackbone;
import hullwright.rules.edit.InsertInDrop;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Mends a joint by an adapter of the catalog that mates with both sides.
 */
final class AdapterForJoint {

	private static final Comparator<Adapter> SHORTEST = Comparator.comparing(adapter -> adapter.length().orElse(Length.ZERO));

	private AdapterForJoint() {
	}

	/**
	 * The fix, if the catalogs that the text can name offer such an adapter and it can go there: the shortest in a backbone, where a
	 * rigid piece is made for the purpose, and the first of the catalog on a branch.
	 */
	static Optional<Fix> fix(PartsOnOffer offer, Joint joint) {
		if (joint.kind() == Joint.Kind.CAP || joint.kind() == Joint.Kind.BEHIND_TERMINATOR || joint.kind() == Joint.Kind.JOIN) {
			return Optional.empty();
		}
		Stream<Adapter> fitting = between(offer, joint.near().connector(), joint.far().connector());
		Optional<Adapter> chosen = joint.kind() == Joint.Kind.BACKBONE ? fitting.min(SHORTEST) : fitting.findFirst();
		return chosen.map(adapter -> new Fix("Insert adapter " + adapter.identity().name() + " between " + joint.near().label() + " and "
				+ joint.far().label(), Fix.Reach.DESIGN, List.of(insert(joint, adapter))));
	}

	/** The adapters on offer that carry power and go between two connectors. */
	static Stream<Adapter> between(PartsOnOffer offer, Optional<Connector> near, Optional<Connector> far) {
		return offer.of(Adapter.class).stream().filter(Adapter::carriesPower).filter(adapter -> fits(adapter.ends(), near, far));
	}

	private static boolean fits(Ends ends, Optional<Connector> near, Optional<Connector> far) {
		return PartWithOtherEnds.mate(ends.first(), near) && PartWithOtherEnds.mate(ends.second(), far)
				|| PartWithOtherEnds.mate(ends.second(), near) && PartWithOtherEnds.mate(ends.first(), far);
	}

	private static EditIntent insert(Joint joint, Adapter adapter) {
		return joint.kind() == Joint.Kind.BACKBONE
				? new InsertInBackbone(joint.far().origin(), InsertInBackbone.Side.BEFORE, "adapter", adapter.identity().name(), adapter.identity())
				: new InsertInDrop(joint.run(), joint.position(), adapter.identity());
	}
}
