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
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What ships as an example says what it is meant to say: good boats are clean, the faulty one has the faults it names.
 */
class ExamplesTest {

	private static final Path EXAMPLES = Path.of("..", "hullwright.examples", "examples");

	private static CheckReport check(String example) throws IOException {
		return Checker.create().check(CheckRequest.ofAll(Snapshot.ofFolder(EXAMPLES.resolve(example)), LocalDate.of(2030, 1, 1)));
	}

	/** No warning, no error; and where a move of the tap would bring a third of a volt, advice. */
	@ParameterizedTest
	@CsvSource({ "first-power-up,", "day-boat,", "harbour-pilot,", "twin-cruiser, advice power/tap-off-centre", "motor-yacht," })
	void goodBoatsAreClean(String example, String advice) throws IOException {
		CheckReport report = check(example);
		assertEquals(advice == null ? List.of() : List.of(advice), report.findings().stream()
				.map(reported -> reported.finding().severity().word() + " " + reported.finding().rule()).toList());
		assertEquals(List.of(), report.gaps());
	}

	/** Combinations by hand; the devices are those that the text names, whatever option they belong to. */
	@ParameterizedTest
	@CsvSource({
			"first-power-up, 1, 1, 3",
			// trim tabs or none
			"day-boat, 2, 2, 7",
			// one or two engines, times: plain, low bridges, flying bridge, each without and with autopilot, and the upper head
			"harbour-pilot, 14, 4, 35",
			// three options that know nothing of each other
			"twin-cruiser, 8, 3, 31",
			// docking station or none, times: no autopilot, autopilot, autopilot with a second head
			"motor-yacht, 6, 2, 33" })
	void everyBoatOfASeriesIsChecked(String example, int combinations, int hulls, int devices) throws IOException {
		SeriesCoverage coverage = check(example).series().get(0);
		assertEquals(combinations, coverage.combinations());
		assertEquals(hulls, coverage.hulls());
		assertEquals(devices, coverage.devices());
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

	@Test
	void eachSlipInATextIsToldBelowItsComment() throws IOException {
		Path folder = EXAMPLES.resolve("faulty-text");
		List<String> marked = new ArrayList<>();
		try (Stream<Path> files = Files.list(folder)) {
			for (Path file : files.sorted().toList()) {
				List<String> lines = Files.readAllLines(file);
				IntStream.range(0, lines.size()).filter(line -> lines.get(line).contains("// SLIP"))
						.forEach(line -> marked.add(file.getFileName() + ":" + (line + 2)));
			}
		}
		CheckReport report = check("faulty-text");
		assertEquals(marked, report.findings().stream()
				.map(reported -> reported.finding().origin().file() + ":" + reported.finding().origin().line()).distinct().sorted().toList());
		assertEquals(List.of("import-missing.hull", "name-taken.hull", "name-unknown.hull", "unit-missing.hull"),
				report.gaps().stream().map(gap -> gap.split(" ")[0]).toList(), "no boat is made of a text whose meaning is in doubt");
	}
}
