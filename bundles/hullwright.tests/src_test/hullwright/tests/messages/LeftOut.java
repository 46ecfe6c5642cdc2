/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.messages;

import java.util.List;

/**
 * PGNs of the dataset that the standard list does without.
 *
 * @param first  the first PGN of the group
 * @param last   the last one
 * @param count  how many of them the dataset has
 * @param reason why they are left out
 */
record LeftOut(int first, int last, int count, String reason) {

	static final List<LeftOut> GROUPS = List.of(
			new LeftOut(60160, 60416, 2, "frames of the ISO transport protocol: a carrier of other PGNs, not data"),
			new LeftOut(65001, 65030, 30, "mains and generator phase by phase, borrowed from another standard: the dataset's entries are incomplete and have no interval"),
			new LeftOut(65240, 65240, 1, "goes by the ISO transport protocol, neither single nor fast"),
			new LeftOut(128538, 128538, 1, "lifts: on ships, not on the boats that this is for"),
			new LeftOut(128768, 128769, 2, "lifts: on ships, not on the boats that this is for"),
			new LeftOut(130052, 130054, 3, "Loran-C: its chains have been switched off (from memory)"),
			new LeftOut(130570, 130574, 5, "libraries of music: not instrument data, no interval but for one, incomplete"),
			new LeftOut(130579, 130586, 8, "set-up of audio zones: not instrument data, no interval, incomplete"));

	boolean holds(int pgn) {
		return pgn >= first && pgn <= last;
	}
}
