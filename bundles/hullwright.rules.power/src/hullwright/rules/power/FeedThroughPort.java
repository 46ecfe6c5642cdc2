/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.wiring.SparePort;
import hullwright.analysis.wiring.SupplyEntry;
import hullwright.network.Network;
import hullwright.network.part.Cord;
import hullwright.network.power.Supply;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.edit.AddFeed;
import hullwright.rules.edit.Fix;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Brings a supply into a network through a spare port, by a fused cord of the catalog.
 */
final class FeedThroughPort {


	private FeedThroughPort() {
	}

	/**
	 * A choice for each supply, those first that enter no network yet.
	 *
	 * @param parts the qualified names of the parts whose ports serve
	 */
	static List<Fix> of(BoatUnderCheck boat, Network network, Set<String> parts) {
		List<SparePort> ports = boat.figures().sparePortsOf(network).stream().filter(port -> !port.capped() && parts.contains(port.part().name())).toList();
		Optional<SparePort> port = ports.stream().filter(each -> cord(boat, each).isPresent()).findFirst();
		if (port.isEmpty()) {
			return List.of();
		}
		Set<String> entering = boat.figures().electrics().wiring().entries().stream().map(SupplyEntry::supply).collect(Collectors.toSet());
		List<Supply> supplies = new ArrayList<>(boat.boat().power().supplies());
		supplies.sort(Comparator.comparing(supply -> entering.contains(supply.name())));
		return supplies.stream()
				.map(supply -> new Fix("Feed it from " + supply.origin().simpleName() + " through " + port.get().label(), Fix.Reach.DESIGN,
						List.of(new AddFeed(network.origin(), port.get().label(), cord(boat, port.get()).orElseThrow().identity(), supply.origin().simpleName()))))
				.toList();
	}

	private static Optional<Cord> cord(BoatUnderCheck boat, SparePort port) {
		return boat.boat().partsOnOffer().of(Cord.class).stream()
				.filter(cord -> cord.fuse().isPresent() && cord.terminates().isEmpty())
				.filter(cord -> port.connector().isPresent() && cord.ends().first().filter(port.connector().get()::mates).isPresent())
				.findFirst();
	}
}
