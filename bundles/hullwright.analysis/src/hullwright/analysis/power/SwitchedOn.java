/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import hullwright.network.power.Converter;
import hullwright.network.power.PowerPlant;
import hullwright.network.power.PowerState;
import hullwright.network.power.Supply;

/**
 * Which supplies and converters are on in a power state: those of which every switch is, and every switch of what is behind them.
 *
 * @param state the power state; all switches are on if none is chosen
 */
public record SwitchedOn(PowerPlant plant, Optional<PowerState> state) {

	/** The qualified names of the supplies that are on. */
	public Set<String> supplies() {
		return plant.supplies().stream().map(Supply::name).filter(this::isOn).collect(Collectors.toUnmodifiableSet());
	}

	/** Whether a supply or converter is on; what feeds itself is not, and a bank always is. */
	public boolean isOn(String name) {
		return isOn(name, new HashSet<>());
	}

	private boolean isOn(String name, Set<String> seen) {
		if (!seen.add(name)) {
			return false;
		}
		Optional<Supply> supply = plant.supplies().stream().filter(each -> each.name().equals(name)).findFirst();
		if (supply.isPresent()) {
			return state.map(each -> each.on().containsAll(supply.get().switches())).orElse(true)
					&& supply.get().from().map(from -> isOn(from, seen)).orElse(true);
		}
		return plant.converters().stream().filter(each -> each.name().equals(name)).findFirst().flatMap(Converter::from)
				.map(from -> isOn(from, seen)).orElse(true);
	}
}
