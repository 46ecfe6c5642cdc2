/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;

import hullwright.quantity.Voltage;

/**
 * How a device is fed.
 *
 * @param ownSupply its own supply, if it has one
 * @param lowest the lowest voltage it works at
 * @param highest the highest voltage it bears
 * @param load what it draws from the network
 */
public record DevicePower(Optional<OwnSupply> ownSupply, Optional<Voltage> lowest, Optional<Voltage> highest,
		Optional<Load> load) {

	/** The catalog says nothing. */
	public static final DevicePower UNSTATED = new DevicePower(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
