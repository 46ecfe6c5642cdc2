/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;

/**
 * A power tap: where a supply enters the backbone.
 *
 * @param identity what it is called
 * @param ends its connectors
 * @param onlySide the side that it feeds, told by the connector there; both sides, if empty
 * @param breaksSupply whether the supply conductors of its two sides are apart
 * @param fuseEachSide the fuse that protects each side, if it has its own
 */
public record Tap(PartIdentity identity, Ends ends, Optional<Gender> onlySide, boolean breaksSupply, Optional<Fuse> fuseEachSide)
		implements Part {
}
