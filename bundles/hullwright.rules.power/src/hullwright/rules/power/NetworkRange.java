/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.DeviceReading;
import hullwright.quantity.Voltage;

/**
 * How far a device is from the voltages that it works between: those of its catalog, else the published range of the network supply,
 * 9.0 to 16.0 V at every device (articles and manuals N2-F, N2-H, N2-I, N2-J).
 */
final class NetworkRange {

	private static final Voltage LOWEST = new Voltage(9);
	private static final Voltage HIGHEST = new Voltage(16);

	private NetworkRange() {
	}

	/** How far the voltage of a device lies above the lowest that it works at; negative if below. */
	static Voltage aboveLowest(DeviceReading device) {
		return device.aboveLowest().orElseGet(() -> device.voltage().minus(LOWEST));
	}

	/** How far the voltage of a device lies below the highest that it bears; negative if above. */
	static Voltage belowHighest(DeviceReading device) {
		return device.belowHighest().orElseGet(() -> HIGHEST.minus(device.voltage()));
	}
}
