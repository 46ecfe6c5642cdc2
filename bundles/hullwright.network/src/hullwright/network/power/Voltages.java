/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.power;

import java.util.Optional;

import hullwright.quantity.Voltage;

/**
 * What voltage a source gives.
 *
 * @param nominal the nominal voltage
 * @param lowest the voltage when the bank is nearly empty
 * @param highest the voltage while the bank is charged
 */
public record Voltages(Optional<Voltage> nominal, Optional<Voltage> lowest, Optional<Voltage> highest) {

	/** Nothing is said. */
	public static final Voltages UNSTATED = new Voltages(Optional.empty(), Optional.empty(), Optional.empty());

	/** Whether anything is said. */
	public boolean isStated() {
		return nominal.isPresent() || lowest.isPresent() || highest.isPresent();
	}
}
