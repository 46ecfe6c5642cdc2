/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.wiring.SparePort;
import hullwright.network.Network;
import hullwright.network.layout.Place;
import hullwright.network.part.Zone;
import hullwright.rules.BoatUnderCheck;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The spare ports of a network that lie open where water gets at them.
 *
 * @param network the network
 * @param ports the ports, at least one
 * @param zones what their places are: wet, outside or both
 */
record ExposedPorts(Network network, List<SparePort> ports, Set<Zone> zones) {

	private static final Set<Zone> WATER = EnumSet.of(Zone.WET, Zone.OUTSIDE);

	/** Those of a network, if there are any. A place that the text does not name is taken for dry. */
	static Optional<ExposedPorts> of(BoatUnderCheck boat, Network network) {
		List<SparePort> open = boat.figures().sparePortsOf(network).stream()
				.filter(port -> !port.capped() && !waterAt(boat, port.part().details().place()).isEmpty()).toList();
		Set<Zone> zones = open.stream().flatMap(port -> waterAt(boat, port.part().details().place()).stream())
				.collect(Collectors.toCollection(() -> EnumSet.noneOf(Zone.class)));
		return open.isEmpty() ? Optional.empty() : Optional.of(new ExposedPorts(network, open, zones));
	}

	/** Of what the text says of a place, the zones in which water gets at what is there. */
	static Set<Zone> waterAt(BoatUnderCheck boat, Optional<String> place) {
		return boat.boat().layout().places().stream().filter(each -> place.filter(each.name()::equals).isPresent()).map(Place::zones)
				.flatMap(Set::stream).filter(WATER::contains).collect(Collectors.toCollection(() -> EnumSet.noneOf(Zone.class)));
	}
}
