/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.fault;

import java.util.Optional;

import hullwright.analysis.wiring.BackboneSide;
import hullwright.network.part.Fuse;
import hullwright.quantity.Current;
import hullwright.quantity.Duration;

/**
 * A fuse or breaker that opens in a fault.
 *
 * @param owner the qualified name of the supply, tap or cord that it belongs to
 * @param side which side it protects, of a tap with a fuse for each
 * @param fuse what it is
 * @param current the fault current through it
 * @param within how long it takes at most
 */
public record FuseOpening(String owner, Optional<BackboneSide> side, Fuse fuse, Current current, Duration within) {
}
