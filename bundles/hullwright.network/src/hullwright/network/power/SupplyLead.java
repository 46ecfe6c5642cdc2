/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.power;

import hullwright.quantity.ConductorSize;
import hullwright.quantity.Length;

/**
 * The two wires from a supply to what it feeds.
 *
 * @param length the length of one of the two
 * @param size the size of each
 */
public record SupplyLead(Length length, ConductorSize size) {
}
