/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Physical quantities, typed by kind: a length cannot be added to a voltage, and a number without a unit does not exist.
 * Values are held in SI units; {@link hullwright.quantity.QuantityText} reads and writes them with the units of the trade.
 */
package hullwright.quantity;
