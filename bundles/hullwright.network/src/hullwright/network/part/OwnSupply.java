/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;

import hullwright.quantity.Current;

/**
 * That a device is fed from elsewhere than the network.
 *
 * @param isolated whether that supply has no current path to the network
 * @param draws what the device draws from it, if the catalog says
 */
public record OwnSupply(boolean isolated, Optional<Current> draws) {
}
