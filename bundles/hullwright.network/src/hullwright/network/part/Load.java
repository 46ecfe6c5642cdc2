/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;

import hullwright.quantity.Duration;
import hullwright.quantity.Quantity;
import hullwright.quantity.Voltage;

/**
 * What a device draws from the network.
 *
 * @param nominal what it usually draws: a current, a power or a resistance
 * @param behaviour how the current follows the voltage
 * @param reference the voltage at which it draws that, if the catalog says
 * @param most what it is guaranteed not to exceed, if the catalog says
 * @param start what it draws when it is switched on, if the catalog says
 * @param startTime for how long, if the catalog says
 */
public record Load(Quantity nominal, Behaviour behaviour, Optional<Voltage> reference, Optional<Quantity> most,
		Optional<Quantity> start, Optional<Duration> startTime) {

	/** How the current of a load follows its voltage. */
	public enum Behaviour {
		/** The current stays as it is. A load stated as a current behaves so unless the catalog says otherwise. */
		CONSTANT_CURRENT,
		/** The current rises with the voltage. A load stated as a resistance behaves so. */
		RESISTIVE,
		/** The current falls as the voltage rises. A load stated as a power behaves so unless the catalog says otherwise. */
		CONSTANT_POWER
	}
}
