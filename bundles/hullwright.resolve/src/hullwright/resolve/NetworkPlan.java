/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.Backbone;
import hullwright.network.Drop;
import hullwright.network.Network;
import hullwright.network.NetworkKind;
import hullwright.network.Origin;
import hullwright.network.part.Cable;
import hullwright.spec.DataNetwork;
import hullwright.spec.NetworkElement;
import hullwright.spec.WhenDrops;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A network with everything that some boat may have in it.
 *
 * @param name the qualified name
 * @param kind what it is for
 * @param usualCable the cable that lengths are made of unless they say otherwise
 * @param backbones its backbones
 * @param drops its drops, each with when its device is fitted
 * @param origin its place in the text
 */
record NetworkPlan(String name, NetworkKind kind, Optional<Cable> usualCable, List<BackbonePlan> backbones,
		List<WhenFitted<DropPlan>> drops, Origin origin) {

	/** The network of a boat. */
	Network on(Set<String> options, List<HullPlan.Change> changes) {
		List<Backbone> fittedBackbones = backbones.stream().map(backbone -> backbone.on(options)).toList();
		List<Drop> fittedDrops = new ArrayList<>(drops.size());
		for (WhenFitted<DropPlan> each : drops) {
			Optional<DropPlan> drop = Optional.of(each.item());
			for (HullPlan.Change change : changes) {
				drop = drop.flatMap(change::applyTo);
			}
			if (drop.isPresent() && each.on(options)) {
				fittedDrops.add(drop.get().fitted());
			} else if (drop.isPresent() && each.item().prepared()) {
				fittedDrops.add(drop.get().withoutDevice());
			}
		}
		changes.stream().flatMap(change -> change.added(name).stream()).map(DropPlan::fitted).forEach(fittedDrops::add);
		return new Network(name, kind, fittedBackbones, fittedDrops, origin);
	}

	static NetworkPlan of(DataNetwork network, String name, CatalogParts parts, TextPlaces places) {
		Optional<Cable> usual = network.getBackbones().stream().findFirst().flatMap(backbone -> parts.cable(backbone.getCable()));
		List<BackbonePlan> backbones = new ArrayList<>();
		for (hullwright.spec.Backbone backbone : network.getBackbones()) {
			String own = backbone.getName() != null ? backbone.getName() : backbones.isEmpty() ? "backbone" : "backbone-" + (backbones.size() + 1);
			Optional<Cable> cable = parts.cable(backbone.getCable()).or(() -> usual);
			backbones.add(new BackbonePlan.Copy(parts, places, name, cable).of(backbone, name + "." + own));
		}
		List<WhenFitted<DropPlan>> drops = new ArrayList<>();
		for (NetworkElement element : network.getElements()) {
			if (element instanceof WhenDrops block) {
				FittedWhen condition = FittedWhen.of(block.getCondition());
				block.getDrops().forEach(drop -> drops.add(drop(drop, condition, parts, places, name, usual)));
			} else {
				drops.add(drop((hullwright.spec.Drop) element, FittedWhen.ALWAYS, parts, places, name, usual));
			}
		}
		NetworkKind kind = network.getKind() == hullwright.spec.NetworkKind.ENGINE ? NetworkKind.ENGINE_BUS : NetworkKind.INSTRUMENT_BUS;
		return new NetworkPlan(name, kind, usual, List.copyOf(backbones), List.copyOf(drops), places.of(network, name));
	}

	private static WhenFitted<DropPlan> drop(hullwright.spec.Drop drop, FittedWhen block, CatalogParts parts, TextPlaces places,
			String network, Optional<Cable> usual) {
		return new WhenFitted<>(DropPlan.of(drop, parts, places, network, usual), block.and(FittedWhen.of(drop.getCondition())), null);
	}
}
