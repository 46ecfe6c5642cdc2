/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;
import java.util.Optional;

import hullwright.network.data.Sending;
import hullwright.network.part.Cable;
import hullwright.quantity.BitRate;
import hullwright.quantity.Length;

/**
 * A serial line from a talker to its listeners. Ends at devices that this boat lacks are left out.
 *
 * @param name the qualified name
 * @param title what people call it
 * @param rate how fast it signals, if the text says
 * @param from who talks; more than one is a mistake
 * @param to who listens
 * @param carries what goes over it, where the text says; else all that the talker tells
 * @param length how long the cable is, if the text says
 * @param cable what the cable is, if the text says
 * @param earthsShield whether its shield is joined at the talker
 * @param origin its place in the text
 */
public record SerialLine(String name, String title, Optional<BitRate> rate, List<DevicePortRef> from, List<DevicePortRef> to,
		List<Sending> carries, Optional<Length> length, Optional<Cable> cable, boolean earthsShield, Origin origin) {

	public SerialLine {
		from = List.copyOf(from);
		to = List.copyOf(to);
		carries = List.copyOf(carries);
	}
}
