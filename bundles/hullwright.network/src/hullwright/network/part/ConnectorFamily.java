/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;

import hullwright.quantity.Current;
import hullwright.quantity.Resistance;

/**
 * A family of connectors: what mates with each other, and what a contact of it may carry.
 *
 * @param name what the catalog calls it
 * @param title what people call it, or an empty text
 * @param standard whether a standard describes it; otherwise it is one maker's own
 * @param rated the current that one contact may carry, if the catalog says
 * @param contact the resistance of one mated contact, if the catalog says
 */
public record ConnectorFamily(String name, String title, boolean standard, Optional<Current> rated, Optional<Resistance> contact) {
}
