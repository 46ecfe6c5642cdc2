/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Origin;

/**
 * Something that a person adds to a series or a catalog, in the words of the language.
 *
 * @param kind what it is
 * @param block the series or the catalog that it goes into
 * @param statement its text, as it would stand at the left margin
 */
public record Addition(Kind kind, Origin block, String statement) {

	/** What can be added. */
	public enum Kind {
		/** A hull, to a series. */
		HULL,
		/** A waiver, to a series. */
		WAIVER,
		/** A part, to a catalog. */
		PART
	}
}
