/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.Optional;

import hullwright.analysis.wiring.BackboneSide;
import hullwright.network.part.Fuse;
import hullwright.quantity.Current;

/**
 * The current through a fuse or breaker.
 *
 * @param owner the qualified name of the supply, tap or cord that it belongs to
 * @param side which side it protects, of a tap with a fuse for each
 * @param fuse what it is
 * @param current the current, without its direction
 */
public record FuseReading(String owner, Optional<BackboneSide> side, Fuse fuse, Current current) {
}
