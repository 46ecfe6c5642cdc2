/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import hullwright.analysis.Figures;
import hullwright.analysis.serial.LevelFit;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialRelays;
import hullwright.analysis.serial.Waiting;
import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.network.Boat;

/**
 * The serial lines of every example and trial boat, with every combination of options and every hull, with what talkers tell of their
 * own and with all that the flow of data brings: they are good ones, so nothing may be wrong with them.
 */
class EverySerialLineTest {

	private static final Path EXAMPLES = Path.of("..", "hullwright.examples", "examples");
	private static final Path TRIALS = Path.of("src_test", "hullwright", "tests", "catalog");

	private static final List<String> GOOD = List.of("first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht");

	private static final Checker CHECKER = Checker.create();

	private static List<Boat> boats(Snapshot snapshot) {
		BoatsRead read = CHECKER.boats(CheckRequest.ofAll(snapshot, LocalDate.of(2030, 1, 1)));
		assertFalse(read.boats().isEmpty());
		return read.boats();
	}

	@TestFactory
	Stream<DynamicTest> ofTheGoodExamples() {
		return GOOD.stream().map(name -> dynamicTest(name, () -> boats(Snapshot.ofFolder(EXAMPLES.resolve(name))).forEach(EverySerialLineTest::good)));
	}

	@TestFactory
	Stream<DynamicTest> ofTheTrialBoats() throws IOException {
		try (Stream<Path> files = Files.list(TRIALS)) {
			return files.filter(file -> file.toString().endsWith(".hull")).sorted().toList().stream().map(file -> dynamicTest(
					file.getFileName().toString(), () -> boats(Snapshot.of(Map.of(file.getFileName().toString(), Files.readString(file)))).forEach(EverySerialLineTest::good)));
		}
	}

	private static void good(Boat boat) {
		good(boat, SerialLineFigures.of(boat));
		good(boat, new Figures(boat).serialLines());
	}

	private static void good(Boat boat, List<SerialLineFigures> lines) {
		assertEquals(boat.serialLines().size(), lines.size());
		for (SerialLineFigures line : lines) {
			String name = line.line().name() + ", " + boat.selection();
			assertEquals(List.of(), line.problems(), name);
			assertTrue(line.use().orElseThrow().margin().fraction() >= 0, name);
			assertTrue(line.waiting() instanceof Waiting.Bounded, name);
			assertTrue(line.ais().flatMap(ais -> ais.fits()).orElse(true), name);
			assertTrue(line.drives().stream().allMatch(each -> each.suffices().orElse(true)), name);
			assertTrue(line.joints().stream().noneMatch(each -> each.level().verdict() == LevelFit.Verdict.DOES_NOT_FIT), name);
			assertTrue(line.buffers().stream().allMatch(each -> each.fits()), name);
		}
		SerialRelays.of(boat, lines).forEach(relay -> assertTrue(relay.holds().isPresent(), relay.device()));
	}
}
