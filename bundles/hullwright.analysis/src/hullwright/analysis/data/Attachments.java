/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.analysis.traffic.DevicesOnNetwork;
import hullwright.network.Boat;
import hullwright.network.DevicePortRef;
import hullwright.network.FittedDevice;
import hullwright.network.Network;
import hullwright.network.SerialLine;
import hullwright.network.WirelessHop;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The carriers of a boat, and which device is on which of them by which port.
 */
final class Attachments {

	private final Map<String, FittedDevice> devices = new LinkedHashMap<>();
	private final Map<Carrier, List<Attachment>> on = new LinkedHashMap<>();
	private final Map<String, List<Attachment>> of = new LinkedHashMap<>();

	private Attachments() {
	}

	static Attachments of(Boat boat) {
		Attachments all = new Attachments();
		for (Network network : boat.networks()) {
			all.network(network);
		}
		boat.devices().forEach(device -> all.devices.putIfAbsent(device.name(), device));
		for (SerialLine line : boat.serialLines()) {
			Carrier carrier = new Carrier(Carrier.Kind.SERIAL_LINE, line.name());
			all.on.put(carrier, new ArrayList<>());
			all.ends(carrier, line.from(), true);
			all.ends(carrier, line.to(), false);
		}
		for (WirelessHop hop : boat.wirelessHops()) {
			Carrier carrier = new Carrier(Carrier.Kind.WIRELESS, hop.name());
			all.on.put(carrier, new ArrayList<>());
			all.ends(carrier, hop.from(), true);
			all.ends(carrier, hop.to(), false);
		}
		return all;
	}

	private void network(Network network) {
		Carrier carrier = new Carrier(Carrier.Kind.NETWORK, network.name());
		on.put(carrier, new ArrayList<>());
		DevicesOnNetwork onNetwork = DevicesOnNetwork.of(network);
		for (FittedDevice device : onNetwork.all()) {
			devices.putIfAbsent(device.name(), device);
			Set<String> ports = onNetwork.portsOf(device);
			if (ports.isEmpty()) {
				attach(new Attachment(carrier, device, Optional.empty(), true, true));
			}
			ports.forEach(port -> attach(new Attachment(carrier, device, Optional.of(port), true, true)));
		}
	}

	private void ends(Carrier carrier, List<DevicePortRef> ends, boolean tells) {
		for (DevicePortRef end : ends) {
			FittedDevice device = devices.get(end.device());
			if (device != null) {
				attach(new Attachment(carrier, device, Optional.of(end.port()), tells, !tells));
			}
		}
	}

	private void attach(Attachment attachment) {
		on.get(attachment.carrier()).add(attachment);
		of.computeIfAbsent(attachment.device().name(), none -> new ArrayList<>()).add(attachment);
	}

	Collection<FittedDevice> devices() {
		return devices.values();
	}

	Set<Carrier> carriers() {
		return on.keySet();
	}

	List<Attachment> on(Carrier carrier) {
		return on.get(carrier);
	}

	List<Attachment> of(String device) {
		return of.getOrDefault(device, List.of());
	}
}
