/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.Optional;

import hullwright.network.power.Voltages;
import hullwright.quantity.Voltage;

/**
 * How full the banks are. What a text does not state is replaced by the nearest that it does.
 */
public enum BankLevel {
	/** Nearly empty. */
	LOWEST,
	/** As the nominal voltage says. */
	NOMINAL,
	/** While they are charged. */
	HIGHEST;

	/** The voltage of a source at this level; none if nothing is stated. */
	public Optional<Voltage> of(Voltages voltages) {
		return switch (this) {
		case LOWEST -> voltages.lowest().or(voltages::nominal).or(voltages::highest);
		case NOMINAL -> voltages.nominal().or(voltages::lowest).or(voltages::highest);
		case HIGHEST -> voltages.highest().or(voltages::nominal).or(voltages::lowest);
		};
	}
}
