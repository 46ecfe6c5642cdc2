/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;
import hullwright.network.part.PartIdentity;

/**
 * Feeds a network through a spare port.
 *
 * @param network the network
 * @param port the port, as the text names it: {@code dash.3}
 * @param cord the cord of the catalog
 * @param supply the name of the supply that feeds it
 */
public record AddFeed(Origin network, String port, PartIdentity cord, String supply) implements EditIntent {
}
