/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;
import hullwright.network.part.PartIdentity;

/**
 * Inserts an adapter in the cabling of a drop or a feed.
 *
 * @param drop the drop or feed
 * @param position before which of the pieces that are written after {@code via} it goes, from 0; their number for the last place
 * @param part the adapter
 */
public record InsertInDrop(Origin drop, int position, PartIdentity part) implements EditIntent {
}
