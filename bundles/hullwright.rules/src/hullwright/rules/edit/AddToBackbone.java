/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;
import hullwright.network.part.PartIdentity;

/**
 * Adds a part at one end of a backbone.
 *
 * @param backbone the backbone
 * @param end which end
 * @param keyword the word that introduces such a part, for example {@code terminator}
 * @param name the name to give it; another is made from it if it is taken
 * @param part the catalog part
 */
public record AddToBackbone(Origin backbone, End end, String keyword, String name, PartIdentity part) implements EditIntent {

	/** The two ends of a backbone, as its text runs. */
	public enum End {
		/** Where its text starts. */
		START,
		/** Where its text ends. */
		END
	}
}
