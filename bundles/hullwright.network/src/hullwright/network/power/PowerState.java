/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.power;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.network.Origin;
import hullwright.quantity.Duration;
import hullwright.quantity.Voltage;

/**
 * A state of the boat: which switches are on, and which banks dip.
 *
 * @param name its name
 * @param title what people call it
 * @param on the switches that are on
 * @param dips banks whose voltage falls, by qualified name
 * @param origin its place in the text
 */
public record PowerState(String name, String title, Set<String> on, Map<String, Dip> dips, Origin origin) {

	/**
	 * A bank's voltage while something heavy runs.
	 *
	 * @param to the voltage that it falls to
	 * @param lasting for how long, if the text says
	 */
	public record Dip(Voltage to, Optional<Duration> lasting) {
	}

	public PowerState {
		on = Set.copyOf(on);
		dips = Map.copyOf(dips);
	}
}
