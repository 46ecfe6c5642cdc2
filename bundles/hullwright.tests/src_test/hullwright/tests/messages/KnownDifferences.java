/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.messages;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where the standard list of PGNs knowingly says something else than the dataset, or more.
 *
 * @param pgn    the PGN
 * @param what   which fact differs
 * @param reason why, and after which source
 */
record KnownDifferences(int pgn, String what, String reason) {

	static final String KIND = "kind of frame";
	static final String LENGTH = "length";
	static final String INTERVAL = "interval";
	static final String PRIORITY = "priority";
	static final String KEYS = "key fields";

	private static final String LIBRARY = "the dataset states none; figure of the open library NMEA2000 for C++, commit 65895317 (MIT)";
	private static final String NUMBERED = "the dataset marks no key (its entry is incomplete); the number in the PGN tells two of them apart";

	static final List<KnownDifferences> ALL = Stream.of(
			each(PRIORITY, LIBRARY, 126208, 126464, 127233),
			each(INTERVAL, LIBRARY, 126983, 126985, 127233, 127252, 127501, 127750, 130567, 130569),
			each(KEYS, "the dataset marks no key; common practice: one compass may send both references", 127250),
			each(KEYS, "the dataset marks the instance only; the NAME of the device that raised the alert, a field of each, tells two apart", 126983,
					126984, 126985, 126986, 126987, 126988),
			each(KEYS, NUMBERED, 127500, 127744, 127745, 127746, 127747, 127748, 127749, 127750, 127751, 128002, 128003, 128006,
					128007, 128008, 128776, 128777, 128778, 128780))
			.flatMap(rows -> rows)
			.toList();

	private static Stream<KnownDifferences> each(String what, String reason, int... pgns) {
		return Arrays.stream(pgns).mapToObj(pgn -> new KnownDifferences(pgn, what, reason));
	}
}
