/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import hullwright.network.Boat;
import hullwright.network.DevicePortRef;
import hullwright.network.FittedDevice;

/**
 * All devices of a boat by qualified name: on its networks and beside them.
 */
final class DevicesOnBoard {

	private final Map<String, FittedDevice> devices = new LinkedHashMap<>();

	private DevicesOnBoard() {
	}

	static DevicesOnBoard of(Boat boat) {
		DevicesOnBoard all = new DevicesOnBoard();
		boat.fittedDevices().forEach(device -> all.devices.put(device.name(), device));
		return all;
	}

	Iterable<FittedDevice> all() {
		return devices.values();
	}

	Optional<FittedDevice> named(String name) {
		return Optional.ofNullable(devices.get(name));
	}

	/** The port, if there is such a device and the port is one for serial lines. */
	Optional<LineEnd> end(DevicePortRef port) {
		return named(port.device()).map(device -> device.model().lines().get(port.port())).map(serial -> new LineEnd(port, serial));
	}
}
