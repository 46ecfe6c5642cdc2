/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.network.Boat;
import hullwright.network.power.Bank;
import hullwright.network.power.Converter;
import hullwright.network.power.PowerPlant;
import hullwright.network.power.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands behind a supply, from the breaker to the bank.
 *
 * @param breakers the supply itself and those that it is fed from, up to the first converter
 * @param converters the converters in between, the nearest first
 * @param bank the bank at its start, if a text names one
 */
record SourceChain(List<Supply> breakers, List<Converter> converters, Optional<Bank> bank) {

	/** The chain of a supply. One that leads in a circle ends where it comes round. */
	static SourceChain of(Boat boat, String supply) {
		PowerPlant plant = boat.power();
		List<Supply> breakers = new ArrayList<>();
		List<Converter> converters = new ArrayList<>();
		Optional<String> at = Optional.of(supply);
		for (int step = 0; at.isPresent() && step <= plant.converters().size() + plant.supplies().size(); step++) {
			String name = at.get();
			Optional<Bank> bank = plant.banks().stream().filter(each -> each.name().equals(name)).findFirst();
			if (bank.isPresent()) {
				return new SourceChain(breakers, converters, bank);
			}
			Optional<Converter> converter = plant.converters().stream().filter(each -> each.name().equals(name)).findFirst();
			Optional<Supply> breaker = plant.supplies().stream().filter(each -> each.name().equals(name)).findFirst();
			converter.ifPresent(converters::add);
			breaker.filter(each -> converters.isEmpty()).ifPresent(breakers::add);
			at = converter.isPresent() ? converter.get().from() : breaker.flatMap(Supply::from);
		}
		return new SourceChain(breakers, converters, Optional.empty());
	}

	/** Whether a fuse or breaker stands at the source. */
	boolean isFused() {
		return breakers.stream().anyMatch(breaker -> breaker.fuse().isPresent());
	}

	/** Whether an isolated converter keeps its voltage. */
	boolean isIsolated() {
		return !converters.isEmpty() && converters.get(0).isolated();
	}
}
