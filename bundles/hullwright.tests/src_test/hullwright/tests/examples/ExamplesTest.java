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
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
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
		// by hand, for one or two engines: plain, low bridges, flying bridge, each without and with autopilot, and the upper head
		assertEquals(2 * (3 + 3 + 1), coverage.combinations());
		assertEquals(4, coverage.hulls());
		assertTrue(coverage.allCombinations() && coverage.allHulls(), coverage + "");
	}

	@Test
	void theFaultyBoatHasItsThreeFaults() throws IOException {
		assertEquals(List.of(
				"error cabling/backbone-too-long: the backbone is 110 m long from end to end; its cable allows 100 m [when quayDisplay and towedSled]",
				"error cabling/terminator-missing: no terminator at the end of the backbone, beyond keel: 1 fitted, 2 needed [when towedSled]",
				"error cabling/drop-too-long: the drop to air is 6.8 m long; the limit is 6 m"),
				check("faulty").findings().stream().map(Expectation::of).map(Expectation::text).toList());
	}

	@Test
	void eachFaultIsFoundWhereItsCommentStands() throws IOException {
		List<String> lines = Files.readAllLines(EXAMPLES.resolve("faulty/survey-launch.hull"));
		List<Integer> below = IntStream.range(0, lines.size()).filter(line -> lines.get(line).contains("// MISTAKE ")).mapToObj(line -> line + 2).toList();
		List<Integer> found = check("faulty").findings().stream().map(reported -> reported.finding().origin().line()).toList();
		assertEquals(List.of(3, 3), List.of(below.size(), found.size()));
		assertEquals(below.get(0), found.get(0), "the backbone");
		assertEquals("tee keel", lines.get(found.get(1) - 1).strip().substring(0, 8), "the last part before the open end");
		assertTrue(found.get(1) > below.get(1) && found.get(1) < below.get(2), "the open end");
		assertEquals(below.get(2), found.get(2), "the drop");
	}
}
