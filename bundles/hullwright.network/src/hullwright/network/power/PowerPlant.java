/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.power;

import java.util.List;

/**
 * Where the power of a boat comes from.
 *
 * @param banks its banks
 * @param converters its converters
 * @param supplies what can feed networks
 * @param states the states it can be in; if none is declared everything is on
 */
public record PowerPlant(List<Bank> banks, List<Converter> converters, List<Supply> supplies, List<PowerState> states) {

	/** Nothing is said. */
	public static final PowerPlant UNSTATED = new PowerPlant(List.of(), List.of(), List.of(), List.of());

	public PowerPlant {
		banks = List.copyOf(banks);
		converters = List.copyOf(converters);
		supplies = List.copyOf(supplies);
		states = List.copyOf(states);
	}
}
