/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import hullwright.network.Origin;

/**
 * Where a supply enters a network: the end of its lead.
 *
 * @param supply the qualified name of the supply
 * @param point the point
 * @param network the number of the network within the boat
 * @param part the qualified name of the tap or feed
 * @param origin the place of that in the text
 */
public record SupplyEntry(String supply, int point, int network, String part, Origin origin) {
}
