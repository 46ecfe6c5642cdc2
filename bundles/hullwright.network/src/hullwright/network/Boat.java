/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import hullwright.network.layout.Layout;
import hullwright.network.power.PowerPlant;

/**
 * One boat as it will be built.
 *
 * @param series the name of the series
 * @param revision the revision of its text, empty if none
 * @param selection the options or the hull
 * @param networks its data networks
 * @param devices the devices that no drop declares: serial equipment and bridges
 * @param serialLines its serial lines
 * @param wirelessHops its radio links
 * @param power where its power comes from
 * @param layout its places and the ways between them
 * @param waivers the findings that the yard lives with
 * @param partsOnOffer the parts that its catalogs offer
 * @param origin its place in the text
 */
public record Boat(String series, String revision, Selection selection, List<Network> networks, List<FittedDevice> devices,
		List<SerialLine> serialLines, List<WirelessHop> wirelessHops, PowerPlant power, Layout layout, List<Waiver> waivers,
		PartsOnOffer partsOnOffer, Origin origin) {

	public Boat {
		networks = List.copyOf(networks);
		devices = List.copyOf(devices);
		serialLines = List.copyOf(serialLines);
		wirelessHops = List.copyOf(wirelessHops);
		waivers = List.copyOf(waivers);
	}

	/** All devices on board, each once: those on its networks, in backbones and at drops, then those that no drop declares. */
	public List<FittedDevice> fittedDevices() {
		Map<String, FittedDevice> all = new LinkedHashMap<>();
		for (Network network : networks) {
			network.backbones().stream().flatMap(each -> each.elements().stream())
					.flatMap(each -> each instanceof Fitting fitting ? fitting.details().device().stream() : Stream.empty())
					.forEach(each -> all.putIfAbsent(each.name(), each));
			network.drops().forEach(each -> each.device().ifPresent(device -> all.putIfAbsent(device.name(), device)));
		}
		devices.forEach(each -> all.putIfAbsent(each.name(), each));
		return List.copyOf(all.values());
	}

	/** The parts of its catalogs, each where it is fitted. */
	public List<FittedPart> fittedParts() {
		return FittedPart.of(this);
	}
}
