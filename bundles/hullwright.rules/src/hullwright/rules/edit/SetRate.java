/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;
import hullwright.quantity.BitRate;

/**
 * Sets how fast a serial line signals.
 *
 * @param line the serial line
 * @param rate the rate
 */
public record SetRate(Origin line, BitRate rate) implements EditIntent {
}
