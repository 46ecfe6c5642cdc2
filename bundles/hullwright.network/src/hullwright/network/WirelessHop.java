/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.Duration;

/**
 * A radio link between devices. Ends at devices that this boat lacks are left out.
 *
 * @param name the qualified name
 * @param title what people call it
 * @param from who sends
 * @param to who receives
 * @param delay how long a message takes, if the text says
 * @param origin its place in the text
 */
public record WirelessHop(String name, String title, List<DevicePortRef> from, List<DevicePortRef> to,
		Optional<Duration> delay, Origin origin) {

	public WirelessHop {
		from = List.copyOf(from);
		to = List.copyOf(to);
	}
}
