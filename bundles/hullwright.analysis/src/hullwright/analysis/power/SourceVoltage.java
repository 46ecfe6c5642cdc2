/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

import hullwright.network.power.PowerPlant;
import hullwright.network.power.Supply;
import hullwright.network.power.Voltages;
import hullwright.quantity.Voltage;

/** The nominal voltage of a supply: that of the bank or converter behind it, or its own if it is a bank of its own. */
final class SourceVoltage {

	private SourceVoltage() {
	}

	static Optional<Voltage> of(PowerPlant plant, String name) {
		Set<String> seen = new HashSet<>();
		String at = name;
		while (seen.add(at)) {
			String current = at;
			Optional<Supply> supply = plant.supplies().stream().filter(each -> each.name().equals(current)).findFirst();
			if (supply.isEmpty()) {
				Optional<Voltages> voltages = plant.banks().stream().filter(each -> each.name().equals(current)).findFirst()
						.map(bank -> bank.voltages())
						.or(() -> plant.converters().stream().filter(each -> each.name().equals(current)).findFirst().map(each -> each.voltages()));
				return voltages.flatMap(BankLevel.NOMINAL::of);
			} else if (supply.get().from().isEmpty()) {
				return BankLevel.NOMINAL.of(supply.get().voltages());
			}
			at = supply.get().from().get();
		}
		return Optional.empty();
	}
}
