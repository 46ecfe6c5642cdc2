/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;

/**
 * A supply that enters a network through a port.
 *
 * @param name the qualified name
 * @param from the port
 * @param legs the cord and cables, from the port to the supply
 * @param supplies the qualified names of the supplies; more than one is a mistake
 * @param earthsShield whether the shield is earthed here
 * @param label what is written on it, empty if nothing
 * @param origin its place in the text
 */
public record Feed(String name, PortRef from, List<Element> legs, List<String> supplies, boolean earthsShield, String label,
		Origin origin) {

	public Feed {
		legs = List.copyOf(legs);
		supplies = List.copyOf(supplies);
	}
}
