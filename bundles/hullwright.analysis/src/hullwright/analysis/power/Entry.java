/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import hullwright.analysis.wiring.SupplyEntry;

/**
 * A place where a supply enters a network, in the circuit.
 *
 * @param place the place in the wiring
 * @param on whether the supply is switched on
 * @param supplyWire the number of the resistor of its lead's supply wire, -1 if the supply is off
 * @param returnWire that of the return wire
 */
record Entry(SupplyEntry place, boolean on, int supplyWire, int returnWire) {
}
