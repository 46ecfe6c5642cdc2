/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

/** What a text for people tells on demand only, since it would hide what has to be done. */
public enum TextDetail {
	/** Each finding that does not count, with the reason. */
	SET_ASIDE,
	/** The files that were read, catalogs and profile included, with what they declare and their hashes. */
	FILES
}
