/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;
import hullwright.quantity.Length;

/**
 * Fits another length of the same cable.
 *
 * @param element a cable of a backbone, a drop or a feed
 * @param old the length that is written today
 * @param length the length that is to be fitted
 */
public record SetLength(Origin element, Length old, Length length) implements EditIntent {
}
