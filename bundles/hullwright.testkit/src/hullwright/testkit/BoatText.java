/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.network.Boat;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Boats from small texts, for tests of what is computed on them.
 */
public final class BoatText {

	private static final LocalDate ANY_DAY = LocalDate.of(2030, 1, 1);

	/** One for all tests, since it keeps the catalogs that it has read. */
	private static final Checker CHECKER = Checker.create();

	private BoatText() {
	}

	/**
	 * The boat of the one series in a text, with these options and no others.
	 *
	 * @throws AssertionError if the text has problems
	 */
	public static Boat boat(String text, String... options) {
		BoatsRead read = CHECKER.boats(new CheckRequest(Snapshot.of(Map.of("boat.hull", text)), Set.of(),
				new WantedBoats.WithOptions(new TreeSet<>(List.of(options))), ANY_DAY));
		assertEquals("", String.join("\n", read.problems().stream().map(each -> each.origin().line() + ": " + each.message()).toList()));
		assertEquals(List.of(), read.gaps());
		assertEquals(1, read.boats().size(), "one series is expected");
		return read.boats().get(0);
	}
}
