/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.Origin;
import hullwright.network.PortRef;

/**
 * How a message names an end of a cable from port to port, as the text does.
 */
final class JoinWords {

	private JoinWords() {
	}

	static String of(PortRef end) {
		String part = Origin.nowhere(end.part()).simpleName();
		return end.port().map(port -> part + "." + port).orElse(part);
	}
}
