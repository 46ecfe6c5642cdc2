/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;

/**
 * Removes an element with all that is said of it: a part of a backbone, a drop, a feed, a cap, a serial line, a hull. A part
 * that something else names cannot be removed alone.
 *
 * @param element what goes
 */
public record Remove(Origin element) implements EditIntent {
}
