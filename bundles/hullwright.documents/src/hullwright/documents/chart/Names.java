/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.chart;

import hullwright.network.Boat;

/**
 * Qualified names as people read them.
 */
final class Names {

	private Names() {
	}

	/** The last part of a qualified name. */
	static String simple(String qualified) {
		return qualified.substring(qualified.lastIndexOf('.') + 1);
	}

	/** Without the series, and without the network if the boat has one only. */
	static String within(Boat boat, String qualified) {
		String name = qualified.startsWith(boat.series() + ".") ? qualified.substring(boat.series().length() + 1) : qualified;
		if (boat.networks().size() == 1) {
			String network = simple(boat.networks().get(0).name()) + ".";
			return name.startsWith(network) ? name.substring(network.length()) : name;
		}
		return name;
	}
}
