/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.network.DevicePortRef;
import hullwright.network.FittedDevice;
import hullwright.network.SerialLine;
import hullwright.network.WirelessHop;
import hullwright.spec.FreeDevice;
import hullwright.spec.PortOfDevice;
import hullwright.spec.SeriesItem;
import hullwright.spec.WhenItems;

/**
 * What stands beside the networks, on some boats: other devices, serial lines, wireless hops.
 */
final class ItemsPlan {

	private final List<WhenFitted<DevicePlan>> devices = new ArrayList<>();
	private final List<WhenFitted<SerialLine>> lines = new ArrayList<>();
	private final List<WhenFitted<WirelessHop>> hops = new ArrayList<>();

	void add(List<? extends SeriesItem> items, WhenFitted.Blocks blocks, Copying copying) {
		for (SeriesItem item : items) {
			if (item instanceof WhenItems block) {
				add(block.getItems(), blocks.when(block.getCondition()), copying);
				add(block.getOtherwise(), blocks.otherwise(block.getCondition()), copying);
			} else if (item instanceof FreeDevice free) {
				DevicePlan.of(free.getDevice(), copying).ifPresent(device -> devices.add(WhenFitted.under(blocks, item.getCondition(), device)));
			} else if (item instanceof hullwright.spec.SerialLine line) {
				lines.add(WhenFitted.under(blocks, item.getCondition(), line(line, copying)));
			} else if (item instanceof hullwright.spec.WirelessHop hop) {
				hops.add(WhenFitted.under(blocks, item.getCondition(), hop(hop, copying)));
			}
		}
	}

	private static SerialLine line(hullwright.spec.SerialLine line, Copying copying) {
		String name = copying.names().ofOwn(line.getName());
		return new SerialLine(name, Copying.text(line.getTitle()), Optional.ofNullable(line.getRate()), ports(line.getFrom(), copying),
				ports(line.getTo(), copying), line.getCarries().stream().map(copying.parts().messages()::sending).toList(),
				Optional.ofNullable(line.getLength()), copying.parts().cable(line.getCable()), line.isEarthsShield(),
				copying.places().of(line, name));
	}

	private static WirelessHop hop(hullwright.spec.WirelessHop hop, Copying copying) {
		String name = copying.names().ofOwn(hop.getName());
		return new WirelessHop(name, Copying.text(hop.getTitle()), ports(hop.getFrom(), copying), ports(hop.getTo(), copying),
				Optional.ofNullable(hop.getDelay()), copying.places().of(hop, name));
	}

	private static List<DevicePortRef> ports(List<PortOfDevice> ports, Copying copying) {
		return ports.stream().map(port -> new DevicePortRef(copying.names().of(port.getDevice()), port.getPort().getName())).toList();
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
