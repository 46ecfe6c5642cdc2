/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.BitRate;
import hullwright.quantity.Current;
import hullwright.quantity.Duration;

/**
 * A serial line of a device.
 *
 * @param talker whether it talks
 * @param listener whether it listens
 * @param level how it signals
 * @param isolated whether it has no current path to the device
 * @param rates the rates it can be set to
 * @param drivesListeners how many listeners it can drive, if the catalog says
 * @param drive the current it can drive, if the catalog says
 * @param draws the current that it takes from the talker, if the catalog says
 * @param buffer how much of what comes in it can hold, if the catalog says
 */
public record SerialPort(boolean talker, boolean listener, Level level, boolean isolated, List<BitRate> rates,
		Optional<Integer> drivesListeners, Optional<Current> drive, Optional<Current> draws, Optional<Duration> buffer) {

	/** How a serial line signals. */
	public enum Level {
		/** The catalog does not say. */
		UNSTATED,
		/** A pair of wires, ITU-T V.11. */
		DIFFERENTIAL,
		/** One wire against ground. */
		SINGLE_ENDED,
		/** One wire against ground, both polarities. */
		RS232
	}

	public SerialPort {
		rates = List.copyOf(rates);
	}
}
