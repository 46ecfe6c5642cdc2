/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;
import hullwright.rules.edit.InsertInBackbone.Side;

/**
 * Moves an element of a backbone, with all that is said of it, to another place in the same walk.
 *
 * @param element what moves
 * @param neighbour the element beside which it goes
 * @param side on which side of that, as the text runs
 */
public record MoveInBackbone(Origin element, Origin neighbour, Side side) implements EditIntent {
}
