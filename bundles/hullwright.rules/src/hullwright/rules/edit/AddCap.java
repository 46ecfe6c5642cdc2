/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;
import hullwright.network.part.PartIdentity;

/**
 * Caps a spare port.
 *
 * @param network the network
 * @param port the port, as the text names it: {@code dash.3}
 * @param cap the cap
 */
public record AddCap(Origin network, String port, PartIdentity cap) implements EditIntent {
}
