/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.network.Boat;
import hullwright.network.FittedDevice;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.SerialLine;
import hullwright.network.WirelessHop;
import hullwright.rules.BoatUnderCheck;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the names in the figures of the data stand for: devices, networks, serial lines and wireless hops.
 */
final class OnBoard {

	private final Map<String, FittedDevice> devices = new HashMap<>();
	private final Map<String, Origin> origins = new HashMap<>();

	private OnBoard(Boat boat) {
		for (Network each : boat.networks()) {
			origins.put(each.name(), each.origin());
		}
		for (SerialLine each : boat.serialLines()) {
			origins.put(each.name(), each.origin());
		}
		for (WirelessHop each : boat.wirelessHops()) {
			origins.put(each.name(), each.origin());
		}
		for (FittedDevice each : boat.fittedDevices()) {
			devices.put(each.name(), each);
			origins.put(each.name(), each.origin());
		}
	}

	/** What is on the boat under check. */
	static OnBoard of(BoatUnderCheck boat) {
		return boat.figures().derived(OnBoard.class, figures -> new OnBoard(figures.boat()));
	}

	/** Where something of this qualified name stands in the text. */
	Origin origin(String name) {
		return origins.getOrDefault(name, Origin.nowhere(name));
	}

	/** The device of this qualified name. */
	Optional<FittedDevice> device(String name) {
		return Optional.ofNullable(devices.get(name));
	}
}
