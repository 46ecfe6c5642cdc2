/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.faulty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.rules.report.CheckReport;
import hullwright.testkit.Expectation;
import hullwright.testkit.MarkedText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One sound boat, and the same with one mistake each, after the lists of symptoms and causes that installers work by (common
 * practice) and the published statements that each file names. All rules run; each mistake gives the findings that are marked in
 * its text, and no others.
 */
class FaultyBoatsTest {

	private static final Path BOATS = Path.of("src_test", "hullwright", "tests", "faulty");
	private static final LocalDate DAY = LocalDate.of(2030, 1, 1);
	private static final Checker CHECKER = Checker.create();

	static List<String> boats() throws IOException {
		try (Stream<Path> files = Files.list(BOATS)) {
			return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".hull")).sorted().toList();
		}
	}

	@ParameterizedTest
	@MethodSource("boats")
	void eachMistakeIsToldByItsCauseAndNothingElse(String boat) throws IOException {
		MarkedText marked = MarkedText.of(Files.readString(BOATS.resolve(boat)));
		CheckReport report = CHECKER.check(CheckRequest.ofAll(Snapshot.of(Map.of("boat.hull", marked.text())), DAY));
		assertEquals(lines(marked.expected()), lines(report.findings().stream().map(Expectation::of).toList()));
		assertEquals(List.of(), report.gaps());
		assertEquals(boat.equals("sound.hull"), marked.expected().isEmpty(), "only the sound boat has no mark");
	}

	private static String lines(List<Expectation> expectations) {
		return String.join("\n", expectations.stream().map(Expectation::toString).toList());
	}

	@Test
	void thereAreMistakesOfEveryKind() throws IOException {
		List<String> marks = boats().stream().flatMap(boat -> read(boat).expected().stream()).map(Expectation::text).toList();
		assertTrue(marks.size() > 20, marks::toString);
		for (String family : List.of("cabling", "connectors", "data", "power")) {
			assertTrue(marks.stream().anyMatch(mark -> mark.contains(" " + family + "/")), family);
		}
	}

	private static MarkedText read(String boat) {
		try {
			return MarkedText.of(Files.readString(BOATS.resolve(boat)));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
