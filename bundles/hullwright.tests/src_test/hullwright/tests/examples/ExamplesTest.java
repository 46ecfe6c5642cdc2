/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.SeriesCoverage;
import hullwright.testkit.Expectation;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What ships as an example says what it is meant to say: good boats are clean, the faulty one has the faults it names.
 */
class ExamplesTest {

	private static final Path EXAMPLES = Path.of("..", "hullwright.examples", "examples");

	private static CheckReport check(String example) throws IOException {
		return Checker.create().check(CheckRequest.ofAll(Snapshot.ofFolder(EXAMPLES.resolve(example)), LocalDate.of(2030, 1, 1)));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "harbour-pilot" })
	void goodBoatsAreClean(String example) throws IOException {
		CheckReport report = check(example);
		assertEquals(List.of(), report.findings());
		assertEquals(List.of(), report.gaps());
	}

	@Test
	void theRealSeriesIsReal() throws IOException {
		SeriesCoverage coverage = check("harbour-pilot").series().get(0);
		assertTrue(coverage.devices() >= 25, coverage + "");
		assertTrue(coverage.combinations() >= 8 && coverage.allCombinations(), coverage + "");
		assertTrue(coverage.hulls() >= 3 && coverage.allHulls(), coverage + "");
	}

	@Test
	void theFaultyBoatHasItsThreeFaults() throws IOException {
		assertEquals(List.of(
				"error cabling/backbone-too-long: the backbone is 110 m long from end to end; its cable allows 100 m [when quayDisplay and towedSled]",
				"error cabling/terminator-missing: no terminator at the end of the backbone, beyond keel: 1 fitted, 2 needed [when towedSled]",
				"error cabling/drop-too-long: the drop to air is 6.8 m long; the limit is 6 m"),
				check("faulty").findings().stream().map(Expectation::of).map(Expectation::text).toList());
	}
}
