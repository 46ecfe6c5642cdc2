/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import hullwright.analysis.wiring.SupplyEntry;
import hullwright.quantity.Current;
import hullwright.quantity.Voltage;

/**
 * A place where a supply enters a network.
 *
 * @param entry the place
 * @param on whether the supply is switched on
 * @param voltage between the two power conductors there, behind the lead
 * @param shift the potential of the return there above the common negative of the boat
 * @param current what flows in through the supply wire of the lead
 * @param back what flows back through its return wire; it differs where the return has another way
 */
public record EntryReading(SupplyEntry entry, boolean on, Voltage voltage, Voltage shift, Current current, Current back) {
}
