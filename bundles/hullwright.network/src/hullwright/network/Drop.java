/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;
import java.util.Optional;

/**
 * A branch from a port to a device.
 *
 * @param name the qualified name: that of the device it declares, else one made of where it starts or ends
 * @param from the port it starts at
 * @param legs the cables and parts between, from the backbone to the device
 * @param device the device at its end; none where it is prepared for one to come
 * @param devicePort the port of the device, if the text names one
 * @param origin its place in the text
 */
public record Drop(String name, PortRef from, List<Element> legs, Optional<FittedDevice> device, Optional<String> devicePort,
		Origin origin) {

	public Drop {
		legs = List.copyOf(legs);
	}
}
