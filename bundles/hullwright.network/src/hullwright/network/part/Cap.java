/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

/**
 * A blank cap for a port that nothing is plugged into.
 *
 * @param identity what it is called
 * @param ends the connector that it closes with
 */
public record Cap(PartIdentity identity, Ends ends) implements Part {
}
