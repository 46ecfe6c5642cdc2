/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;
import hullwright.network.part.PartIdentity;

/**
 * Inserts a part beside another in the walk along a backbone.
 *
 * @param neighbour the element of the backbone beside which it goes
 * @param side on which side of it, as the text runs
 * @param keyword the word that introduces such a part, for example {@code isolator}
 * @param name the name to give it; another is made from it if it is taken
 * @param part the catalog part
 */
public record InsertInBackbone(Origin neighbour, Side side, String keyword, String name, PartIdentity part) implements EditIntent {

	/** The two sides of an element of a backbone, as its text runs. */
	public enum Side {
		/** On the line before it. */
		BEFORE,
		/** On the line after it. */
		AFTER
	}
}
