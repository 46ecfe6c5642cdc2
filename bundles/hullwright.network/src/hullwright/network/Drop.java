/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;
import java.util.Optional;

/**
 * A branch from a port of the backbone to a device.
 *
 * @param name the qualified name, that of its device
 * @param part the qualified name of the tee or block it starts at
 * @param port the number of the port it starts at
 * @param legs the cables and parts between, from the backbone to the device; the device's own lead is not among them
 * @param device the device, or empty where cable and port are prepared for a later one
 * @param origin its place in the text
 */
public record Drop(String name, String part, int port, List<Element> legs, Optional<FittedDevice> device, Origin origin) {

	public Drop {
		legs = List.copyOf(legs);
	}
}
