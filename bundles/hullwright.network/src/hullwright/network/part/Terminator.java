/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import hullwright.quantity.Resistance;
import java.util.Optional;

/**
 * A terminating resistor.
 *
 * @param identity its name and where its values come from
 * @param ends its connector; two if it stands in line, the second for the device behind it
 * @param inLine whether a device may stand behind it
 * @param resistance what it puts across the signal pair
 */
public record Terminator(PartIdentity identity, Ends ends, boolean inLine, Optional<Resistance> resistance) implements Part {
}
