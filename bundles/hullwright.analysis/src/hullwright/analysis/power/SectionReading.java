/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.List;
import java.util.Optional;

import hullwright.analysis.wiring.SupplyEntry;
import hullwright.quantity.Current;
import hullwright.quantity.Voltage;

/**
 * A stretch of a network whose supply conductor is unbroken.
 *
 * @param network the qualified name of the network
 * @param devices the qualified names of the devices on it
 * @param supplies the qualified names of the supplies that enter it, each once for every entry
 * @param places the places where they enter it
 * @param feeding how many of these entries are switched on
 * @param current what its devices draw together
 * @param highest the highest voltage on it, at an entry or a device; none if it is not fed
 * @param lowest the lowest voltage at a device; none if it is not fed or has no devices
 * @param weakest the device with that voltage
 */
public record SectionReading(String network, List<String> devices, List<String> supplies, List<SupplyEntry> places, int feeding, Current current,
		Optional<Voltage> highest, Optional<Voltage> lowest, Optional<String> weakest) {

	public SectionReading {
		devices = List.copyOf(devices);
		supplies = List.copyOf(supplies);
		places = List.copyOf(places);
	}

	/** The voltage that is lost between its best and its weakest place. */
	public Optional<Voltage> drop() {
		return highest.flatMap(high -> lowest.map(high::minus));
	}
}
