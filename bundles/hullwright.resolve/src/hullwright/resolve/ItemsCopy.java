/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import hullwright.network.DevicePortRef;
import hullwright.network.SerialLine;
import hullwright.network.WirelessHop;
import hullwright.spec.FreeDevice;
import hullwright.spec.PortOfDevice;
import hullwright.spec.SeriesItem;
import hullwright.spec.WhenItems;

/**
 * Copies what stands beside the networks out of the spec.
 */
final class ItemsCopy {

	private final Copying copying;
	private final List<WhenFitted<DevicePlan>> devices = new ArrayList<>();
	private final List<WhenFitted<SerialLine>> lines = new ArrayList<>();
	private final List<WhenFitted<WirelessHop>> hops = new ArrayList<>();

	ItemsCopy(Copying copying) {
		this.copying = copying;
	}

	/** The plan of these items. */
	ItemsPlan of(List<? extends SeriesItem> items) {
		add(items, WhenFitted.Blocks.NONE);
		return new ItemsPlan(devices, lines, hops);
	}

	private void add(List<? extends SeriesItem> items, WhenFitted.Blocks blocks) {
		for (SeriesItem item : items) {
			if (item instanceof WhenItems block) {
				add(block.getItems(), blocks.when(block.getCondition()));
				add(block.getOtherwise(), blocks.otherwise(block.getCondition()));
			} else if (item instanceof FreeDevice free) {
				DevicePlan.of(free.getDevice(), copying).ifPresent(device -> devices.add(WhenFitted.under(blocks, item.getCondition(), device)));
			} else if (item instanceof hullwright.spec.SerialLine line) {
				lines.add(WhenFitted.under(blocks, item.getCondition(), line(line)));
			} else if (item instanceof hullwright.spec.WirelessHop hop) {
				hops.add(WhenFitted.under(blocks, item.getCondition(), hop(hop)));
			}
		}
	}

	private SerialLine line(hullwright.spec.SerialLine line) {
		String name = copying.names().ofOwn(line.getName());
		return new SerialLine(name, Copying.text(line.getTitle()), Optional.ofNullable(line.getRate()), ports(line.getFrom()),
				ports(line.getTo()), line.getCarries().stream().map(copying.parts().messages()::sending).toList(),
				Optional.ofNullable(line.getLength()), copying.parts().cable(line.getCable()), line.isEarthsShield(),
				copying.places().of(line, name));
	}

	private WirelessHop hop(hullwright.spec.WirelessHop hop) {
		String name = copying.names().ofOwn(hop.getName());
		return new WirelessHop(name, Copying.text(hop.getTitle()), ports(hop.getFrom()), ports(hop.getTo()),
				Optional.ofNullable(hop.getDelay()), copying.places().of(hop, name));
	}

	private List<DevicePortRef> ports(List<PortOfDevice> ports) {
		return ports.stream().map(port -> new DevicePortRef(copying.names().of(port.getDevice()), port.getPort().getName())).toList();
	}
}
