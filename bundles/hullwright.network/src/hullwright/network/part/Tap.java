/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import hullwright.quantity.Current;
import java.util.Optional;

/**
 * A power tap: where a supply enters the backbone.
 *
 * @param identity its name and where its values come from
 * @param ends its backbone connectors
 * @param feedsBothSides whether the supply goes to both sides of the backbone
 * @param fuseEachSide the fuse that protects each side, if it has its own
 */
public record Tap(PartIdentity identity, Ends ends, boolean feedsBothSides, Optional<Current> fuseEachSide) implements Part {
}
