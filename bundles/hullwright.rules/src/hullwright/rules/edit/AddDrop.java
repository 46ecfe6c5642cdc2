/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;
import hullwright.network.part.PartIdentity;
import hullwright.quantity.Length;
import java.util.Optional;

/**
 * Adds a device on a drop.
 *
 * @param network the network
 * @param port the spare port, as the text names it: {@code dash.3}
 * @param cable how much of the network's cable the drop takes; empty for a device that brings its lead
 * @param name the name to give the device; another is made from it if it is taken
 * @param device the device of the catalog
 */
public record AddDrop(Origin network, String port, Optional<Length> cable, String name, PartIdentity device) implements EditIntent {
}
