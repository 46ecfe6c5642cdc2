/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import hullwright.network.Backbone;
import hullwright.network.Boat;
import hullwright.network.DevicePortRef;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Network;

/**
 * All devices of a boat by qualified name: on its networks and beside them.
 */
final class DevicesOnBoard {

	private final Map<String, FittedDevice> devices = new LinkedHashMap<>();

	private DevicesOnBoard() {
	}

	static DevicesOnBoard of(Boat boat) {
		DevicesOnBoard all = new DevicesOnBoard();
		for (Network network : boat.networks()) {
			for (Backbone backbone : network.backbones()) {
				for (Element element : backbone.elements()) {
					if (element instanceof Fitting fitting) {
						fitting.details().device().ifPresent(all::add);
					}
				}
			}
			for (Drop drop : network.drops()) {
				drop.device().ifPresent(all::add);
			}
		}
		boat.devices().forEach(all::add);
		return all;
	}

	private void add(FittedDevice device) {
		devices.putIfAbsent(device.name(), device);
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
