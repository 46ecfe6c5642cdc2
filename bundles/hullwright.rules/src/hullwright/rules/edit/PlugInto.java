/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;

/**
 * Plugs a drop, a feed or a join into another port.
 *
 * @param run the drop or its device, the feed, or the join
 * @param old the port that it is plugged into today, as the text names it: {@code dash.3}
 * @param port the port that it is to be plugged into
 */
public record PlugInto(Origin run, String old, String port) implements EditIntent {
}
