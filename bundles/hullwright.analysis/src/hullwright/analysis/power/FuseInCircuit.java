/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import hullwright.network.part.Fuse;

/**
 * A fuse or breaker in a supply conductor.
 *
 * @param owner the qualified name of the supply, tap or cord that it belongs to
 * @param fuse what it is
 * @param resistor the number of the resistor that it stands in
 */
record FuseInCircuit(String owner, Fuse fuse, int resistor) {
}
