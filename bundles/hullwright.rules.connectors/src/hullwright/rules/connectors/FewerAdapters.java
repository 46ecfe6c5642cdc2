/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.Joint;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.PartsOnOffer;
import hullwright.network.part.Adapter;
import hullwright.network.part.Part;
import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.Remove;
import hullwright.rules.edit.ReplacePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Does a drop with fewer adapters.
 */
final class FewerAdapters {

	private final PartsOnOffer offer;
	private final List<Element> legs;
	private final List<Joint> joints;

	/** For a drop with a joint before each of its pieces and one at its device. */
	private FewerAdapters(PartsOnOffer offer, Drop drop, List<Joint> joints) {
		this.offer = offer;
		this.legs = drop.legs();
		this.joints = joints;
	}

	/** Cable that fits at both ends by itself; else one adapter in the place of two that are plugged into each other. */
	static Optional<Fix> fix(PartsOnOffer offer, Drop drop, List<Joint> joints) {
		if (joints.size() != drop.legs().size() + 1) {
			return Optional.empty();
		}
		FewerAdapters fewer = new FewerAdapters(offer, drop, joints);
		return fewer.withOtherCable().or(fewer::withOneForTwo);
	}

	private Optional<Fix> withOtherCable() {
		List<CableRun> cables = legs.stream().filter(CableRun.class::isInstance).map(CableRun.class::cast).toList();
		List<Element> adapters = legs.stream().filter(FewerAdapters::isAdapter).toList();
		if (cables.size() != 1 || adapters.size() != legs.size() - 1 || cables.get(0).cable().isEmpty()) {
			return Optional.empty();
		}
		Part old = cables.get(0).cable().get();
		return PartWithOtherEnds.between(offer, old, joints.get(0).near().connector(), joints.get(legs.size()).far().connector()).map(cable -> {
			List<EditIntent> intents = new ArrayList<>();
			adapters.forEach(adapter -> intents.add(new Remove(adapter.origin())));
			intents.add(new ReplacePart(cables.get(0).origin(), old.identity(), cable.identity()));
			return new Fix("Take cable " + cable.identity().name() + ", and no adapter", Fix.Reach.DESIGN, intents);
		});
	}

	private Optional<Fix> withOneForTwo() {
		for (int at = 1; at < legs.size(); at++) {
			if (isAdapter(legs.get(at - 1)) && isAdapter(legs.get(at))) {
				Fitting first = (Fitting) legs.get(at - 1);
				Element second = legs.get(at);
				Optional<Adapter> one = AdapterForJoint.between(offer, joints.get(at - 1).near().connector(), joints.get(at + 1).far().connector()).findFirst();
				if (one.isPresent()) {
					return Optional.of(new Fix("Take adapter " + one.get().identity().name() + " in the place of both", Fix.Reach.DESIGN, List.of(
							new ReplacePart(first.origin(), first.part().identity(), one.get().identity()), new Remove(second.origin()))));
				}
			}
		}
		return Optional.empty();
	}

	private static boolean isAdapter(Element leg) {
		return leg instanceof Fitting fitting && fitting.part() instanceof Adapter;
	}
}
