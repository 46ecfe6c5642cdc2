/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;

import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Resistance;

/**
 * A cable with a plug at one end that feeds a network through a port.
 *
 * @param identity what it is called
 * @param ends its plug; the other end is bare
 * @param length how long it is
 * @param power its power conductors
 * @param fuse the fuse in it, if any
 * @param rated the current it may carry
 * @param terminates the terminating resistor built into it, if any
 */
public record Cord(PartIdentity identity, Ends ends, Optional<Length> length, Optional<Cable.Conductor> power,
		Optional<Fuse> fuse, Optional<Current> rated, Optional<Resistance> terminates) implements Part {
}
