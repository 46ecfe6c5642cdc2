/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.Figures;
import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.report.figures.FiguresText;
import hullwright.report.figures.ProjectFigures;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What people read of the figures, held against what programs read.
 */
class TextFiguresTest {

	private static final Path EXAMPLES = Path.of("..", "hullwright.examples", "examples");

	private static List<ProjectFigures> figures(String example) throws IOException {
		BoatsRead read = Checker.create().boats(new CheckRequest(Snapshot.ofFolder(EXAMPLES.resolve(example)), Set.of(), new WantedBoats.Plainest(),
				LocalDate.EPOCH));
		return List.of(new ProjectFigures("boat", read.boats().stream().map(Figures::new).toList(), read.problems(), read.gaps(), false));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty", "faulty-text" })
	void noLineIsWiderThanAPage(String example) throws IOException {
		FiguresText.of(figures(example), true).lines().forEach(line -> assertTrue(line.length() <= 110, line));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void noNameIsCut(String example) throws IOException {
		assertFalse(FiguresText.of(figures(example), true).contains("..."));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void whatIsLeftOutIsNotWorse(String example) throws IOException {
		for (PrintedTable fuses : PrintedTable.in(FiguresText.of(figures(example), true), "Fuses and breakers")) {
			List<Integer> used = fuses.rows().stream().map(row -> Integer.valueOf(fuses.figure(row, "Used").replace(" %", ""))).toList();
			assertEquals(used.stream().sorted(Comparator.reverseOrder()).toList(), used);
		}
		String some = FiguresText.of(figures(example), false);
		Stream.of("Supplies", "Banks and converters", "The simple formula").flatMap(title -> PrintedTable.in(some, title).stream())
				.forEach(inOrder -> assertFalse(inOrder.rows().toString().contains("none of them worse"), inOrder.title()));
	}
}
