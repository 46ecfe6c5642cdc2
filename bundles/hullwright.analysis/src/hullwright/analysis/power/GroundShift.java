/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import hullwright.quantity.Voltage;

/**
 * By how much the return conductors of devices on one network lie apart. A receiver takes the signals of a sender only as long
 * as this keeps within what its transceiver tolerates.
 *
 * @param network the qualified name of the network
 * @param potentials by qualified name of the device, the potential of its return above the common negative; only devices between
 *            which a conductor leads
 */
public record GroundShift(String network, Map<String, Voltage> potentials) {

	public GroundShift {
		potentials = Collections.unmodifiableMap(new LinkedHashMap<>(potentials));
	}

	/**
	 * Two devices and how far apart their returns are.
	 *
	 * @param higher the device with the higher return
	 * @param lower the device with the lower return
	 * @param shift how far they lie apart, never negative
	 */
	public record Pair(String higher, String lower, Voltage shift) {
	}

	/** How far the return of one device lies above that of another; none if one of them is not here. */
	public Optional<Voltage> between(String one, String other) {
		return Optional.ofNullable(potentials.get(one)).flatMap(mine -> Optional.ofNullable(potentials.get(other)).map(mine::minus));
	}

	/** The two devices whose returns lie farthest apart; none if all lie at one potential. */
	public Optional<Pair> worst() {
		if (potentials.values().stream().distinct().count() < 2) {
			return Optional.empty();
		}
		Comparator<Map.Entry<String, Voltage>> byPotential = Map.Entry.comparingByValue();
		Map.Entry<String, Voltage> highest = potentials.entrySet().stream().max(byPotential).orElseThrow();
		Map.Entry<String, Voltage> lowest = potentials.entrySet().stream().min(byPotential).orElseThrow();
		return Optional.of(new Pair(highest.getKey(), lowest.getKey(), highest.getValue().minus(lowest.getValue())));
	}
}
