/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.quantity.Length;
import hullwright.quantity.Resistance;

/**
 * A kind of device: on a network, on a serial line, or both.
 *
 * @param identity what it is called
 * @param lead the cable that is part of it, if any
 * @param ports its network connectors by name, in the order of the catalog
 * @param lines its serial lines by name
 * @param radios its radios by name
 * @param isolations pairs of its ports without a current path between them
 * @param power how it is fed
 * @param terminates the terminating resistor built into it, if any
 * @param inputResistance the resistance that each of its network ports puts across the signal pair, apart from a terminating
 *        resistor: the differential internal resistance of ISO 11898-2, if the catalog says
 * @param earthsShield whether it joins the shield to earth
 * @param addresses how many addresses it claims on the network, at least 1
 * @param maker who makes it, if the catalog says
 * @param data what it tells and wants
 */
public record DeviceModel(PartIdentity identity, Optional<Lead> lead, Map<String, Connector> ports,
		Map<String, SerialPort> lines, Map<String, Radio> radios, List<Set<String>> isolations, DevicePower power,
		Optional<Resistance> terminates, Optional<Resistance> inputResistance, boolean earthsShield, int addresses, Optional<String> maker,
		DeviceData data)
		implements Part {

	public DeviceModel {
		ports = Collections.unmodifiableMap(new LinkedHashMap<>(ports));
		lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
		radios = Collections.unmodifiableMap(new LinkedHashMap<>(radios));
		isolations = List.copyOf(isolations);
	}

	/** A device of which no more is known than how it is joined and fed. */
	public static DeviceModel of(PartIdentity identity, Optional<Lead> lead, Map<String, Connector> ports, DevicePower power) {
		return new DeviceModel(identity, lead, ports, Map.of(), Map.of(), List.of(), power, Optional.empty(), Optional.empty(), false, 1, Optional.empty(),
				DeviceData.UNSTATED);
	}

	/**
	 * The connectors that meet the network: that of the lead, or those of its ports in the order of the catalog. In a drop the
	 * first meets the cable; a backbone that runs through the device comes in by the first and goes out by the second.
	 */
	@Override
	public Ends ends() {
		if (lead.isPresent()) {
			return new Ends(lead.get().connector(), Optional.empty());
		}
		List<Connector> inOrder = List.copyOf(ports.values());
		return new Ends(inOrder.isEmpty() ? Optional.empty() : Optional.of(inOrder.get(0)),
				inOrder.size() < 2 ? Optional.empty() : Optional.of(inOrder.get(1)));
	}

	/** The connector of one port, or that which meets a drop if no port is named. */
	public Optional<Connector> connector(Optional<String> port) {
		return port.isPresent() ? Optional.ofNullable(ports.get(port.get())) : ends().first();
	}

	/**
	 * A cable that is part of a device.
	 *
	 * @param length how long it is; it counts as part of the drop
	 * @param cable what it is made of, if the catalog says
	 * @param connector the connector at its free end
	 */
	public record Lead(Length length, Optional<Cable> cable, Optional<Connector> connector) {
	}
}
