/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

/**
 * A pair of connectors that carries a cable through a bulkhead.
 *
 * @param identity its name and where its values come from
 * @param ends its connectors
 * @param watertight whether the bulkhead stays watertight
 */
public record FeedThrough(PartIdentity identity, Ends ends, boolean watertight) implements Part {
}
