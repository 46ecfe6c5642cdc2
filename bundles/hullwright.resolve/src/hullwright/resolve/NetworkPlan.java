/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.Backbone;
import hullwright.network.FittedDevice;
import hullwright.network.Network;
import hullwright.network.NetworkKind;
import hullwright.network.Origin;
import hullwright.network.part.Cable;
import hullwright.spec.DataNetwork;

/**
 * A network with everything that some boat may have in it.
 *
 * @param name the qualified name
 * @param kind what it is for
 * @param when when it is fitted
 * @param usualCable the cable that lengths are made of unless they say otherwise
 * @param backbones its backbones
 * @param hanging what hangs on it
 * @param origin its place in the text
 */
record NetworkPlan(String name, NetworkKind kind, FittedWhen when, Optional<Cable> usualCable, List<BackbonePlan> backbones,
		HangingPlan hanging, Origin origin) {

	/** The network of a boat, or empty if the boat has none. */
	Optional<Network> on(Order order, HullPlan hull, Map<String, FittedDevice> otherDevices) {
		if (!when.holds(order)) {
			return Optional.empty();
		}
		List<Backbone> fitted = backbones.stream().map(backbone -> backbone.on(order, hull)).toList();
		HangingPlan.Hanging usual = hanging.on(order, hull, otherDevices);
		HangingPlan.Hanging found = hull.addedTo(name).map(added -> usual.and(added.on(order, hull, otherDevices))).orElse(usual);
		FittedPorts ports = FittedPorts.of(fitted, found.drops());
		return Optional.of(new Network(name, kind, fitted,
				found.drops().stream().map(ports::lay).toList(), found.feeds().stream().map(ports::lay).toList(),
				found.caps(), found.joins().stream().map(ports::lay).toList(), origin));
	}

	static NetworkPlan of(DataNetwork network, Copying copying) {
		String name = copying.names().of(network);
		Optional<Cable> usual = network.getBackbones().stream().findFirst().flatMap(backbone -> copying.parts().cable(backbone.getCable()));
		List<BackbonePlan> backbones = new ArrayList<>();
		for (hullwright.spec.Backbone backbone : network.getBackbones()) {
			String own = backbone.getName() != null ? backbone.getName() : backbones.isEmpty() ? "backbone" : "backbone-" + (backbones.size() + 1);
			Optional<Cable> cable = copying.parts().cable(backbone.getCable()).or(() -> usual);
			backbones.add(new BackboneCopy(copying, name, cable).of(backbone, name + "." + own));
		}
		HangingPlan hanging = new HangingCopy(name, usual, copying).of(network.getElements());
		NetworkKind kind = network.getKind() == hullwright.spec.NetworkKind.ENGINE ? NetworkKind.ENGINE_BUS : NetworkKind.INSTRUMENT_BUS;
		return new NetworkPlan(name, kind, FittedWhen.of(network.getCondition()), usual, List.copyOf(backbones), hanging,
				copying.places().of(network, name));
	}
}
