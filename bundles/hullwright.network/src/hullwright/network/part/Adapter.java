/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import hullwright.quantity.Current;
import hullwright.quantity.Length;
import java.util.Optional;

/**
 * A short part that joins connectors which do not mate by themselves.
 *
 * @param identity its name and where its values come from
 * @param ends its connectors, from the backbone to the device
 * @param length the length that it adds to a drop, if the catalog says
 * @param carriesPower whether it passes the supply on
 * @param power its power conductors, if the catalog says
 * @param signal its signal conductors, if the catalog says
 * @param rated the current it may carry
 */
public record Adapter(PartIdentity identity, Ends ends, Optional<Length> length, boolean carriesPower,
		Optional<Cable.Conductor> power, Optional<Cable.Conductor> signal, Optional<Current> rated) implements Part {
}
