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
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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

	/** No terminator, no lead, one device right at the tee that is fed: a page full of words. */
	@Test
	void aPoorBoatIsToldWithinThePageToo() {
		BoatsRead read = Checker.create().boats(new CheckRequest(Snapshot.of(Map.of("poor.hull", """
				import "standard:parts"
				series Skerry "Invented" {
				  bank accumulatorOfTheWholeDayBoat { 12 V, lowest 11 V; internal resistance 5 mohm }
				  supply supplyOfTheInstrumentsAtTheSteeringPosition { from accumulatorOfTheWholeDayBoat }
				  network instrumentsOfTheSteeringPosition {
				    backbone of light { tee first : block4 tee second : block4 }
				    feed first.2 from supplyOfTheInstrumentsAtTheSteeringPosition
				    drop first.1 to displayAboveTheSteeringWheel : instrumentDisplay
				    drop second.1 via 3 m of light to displayBelowTheSteeringWheel : instrumentDisplay
				  }
				}
				""")), Set.of(), new WantedBoats.Plainest(), LocalDate.EPOCH));
		String page = FiguresText.of(List.of(new ProjectFigures("boat", read.boats().stream().map(Figures::new).toList(), read.problems(), read.gaps(), false)),
				true);

		page.lines().forEach(line -> assertTrue(line.length() <= 110, line));
		String words = page.replaceAll("\\s+", " ");
		assertTrue(words.contains("Load: senders see 15.0 kohm. A sender guarantees its level into 50 ohm to 65 ohm only:"), page);
		assertTrue(words.contains("(10.0 to 50.0 kohm, by the nodes)"), page);
		assertFalse(words.contains("borne for ever"), "hundreds of amperes through contacts for 4 A: " + page);
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
