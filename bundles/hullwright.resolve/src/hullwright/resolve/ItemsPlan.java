/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import hullwright.network.DevicePortRef;
import hullwright.network.FittedDevice;
import hullwright.network.SerialLine;
import hullwright.network.WirelessHop;

/**
 * What stands beside the networks, on some boats.
 *
 * @param devices devices that no drop declares
 * @param lines serial lines
 * @param hops wireless hops
 */
record ItemsPlan(List<WhenFitted<DevicePlan>> devices, List<WhenFitted<SerialLine>> lines, List<WhenFitted<WirelessHop>> hops) {

	ItemsPlan {
		devices = List.copyOf(devices);
		lines = List.copyOf(lines);
		hops = List.copyOf(hops);
	}

	/** This, and what a hull adds to it. */
	ItemsPlan and(ItemsPlan added) {
		return new ItemsPlan(both(devices, added.devices), both(lines, added.lines), both(hops, added.hops));
	}

	private static <T> List<T> both(List<T> one, List<T> other) {
		return Stream.concat(one.stream(), other.stream()).toList();
	}

	/** The devices of a boat, by qualified name. */
	Map<String, FittedDevice> devices(Order order, HullPlan hull) {
		Map<String, FittedDevice> fitted = new LinkedHashMap<>();
		for (WhenFitted<DevicePlan> device : devices) {
			if (device.on(order) && !hull.removes(device.item().usual().name())) {
				fitted.putIfAbsent(device.item().usual().name(), hull.changed(device.item()));
			}
		}
		return fitted;
	}

	/** The serial lines of a boat; those between devices that it lacks are left out. */
	List<SerialLine> lines(Order order, HullPlan hull, Set<String> onBoard) {
		return lines.stream().filter(line -> line.on(order) && !hull.removes(line.item().name())).map(WhenFitted::item)
				.map(line -> new SerialLine(line.name(), line.title(), line.rate(), fitted(line.from(), onBoard), fitted(line.to(), onBoard),
						line.carries(), line.length(), line.cable(), line.earthsShield(), line.origin()))
				.filter(line -> !line.from().isEmpty() || !line.to().isEmpty())
				.toList();
	}

	/** The wireless hops of a boat; those between devices that it lacks are left out. */
	List<WirelessHop> hops(Order order, HullPlan hull, Set<String> onBoard) {
		return hops.stream().filter(hop -> hop.on(order) && !hull.removes(hop.item().name())).map(WhenFitted::item)
				.map(hop -> new WirelessHop(hop.name(), hop.title(), fitted(hop.from(), onBoard), fitted(hop.to(), onBoard), hop.delay(), hop.origin()))
				.filter(hop -> !hop.from().isEmpty() || !hop.to().isEmpty())
				.toList();
	}

	private static List<DevicePortRef> fitted(List<DevicePortRef> ports, Set<String> onBoard) {
		return ports.stream().filter(port -> onBoard.contains(port.device())).toList();
	}
}
