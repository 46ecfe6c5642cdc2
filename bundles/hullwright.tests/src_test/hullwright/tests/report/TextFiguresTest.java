/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import hullwright.analysis.Figures;
import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.report.figures.FiguresJson;
import hullwright.report.figures.FiguresText;
import hullwright.report.figures.ProjectFigures;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
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

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht" })
	void theVoltagesOfTheTablesAreTheLowestOfAllStates(String example) throws IOException {
		List<ProjectFigures> figures = figures(example);
		Map<String, String> read = new TreeMap<>();
		boolean within = false;
		for (String line : FiguresText.of(figures, true).lines().toList()) {
			within = line.startsWith("Voltages at the devices") || within && !line.isEmpty();
			String[] cells = line.trim().split(" {2,}");
			if (within && cells.length > 5 && !cells[0].equals("Device")) {
				read.merge(cells[0], cells[1], (one, other) -> one + " / " + other);
			}
		}
		Map<String, String> expected = new TreeMap<>();
		JsonObject boat = JsonParser.parseString(FiguresJson.of(figures)).getAsJsonObject().getAsJsonArray("projects").get(0).getAsJsonObject()
				.getAsJsonArray("boats").get(0).getAsJsonObject();
		lowest(boat).forEach((device, volts) -> expected.merge(device.substring(device.lastIndexOf('.') + 1),
				String.format(Locale.ROOT, "%.2f V", volts), (one, other) -> one + " / " + other));

		assertTrue(!expected.isEmpty(), "there are devices");
		assertEquals(expected, read);
	}

	/** By network and device, the lowest voltage of all states in which it is fed. */
	private static Map<String, Double> lowest(JsonObject boat) {
		Map<String, Double> lowest = new TreeMap<>();
		for (JsonElement state : boat.getAsJsonArray("states")) {
			StreamSupport.stream(state.getAsJsonObject().getAsJsonObject("lowest").getAsJsonArray("devices").spliterator(), false)
					.map(JsonElement::getAsJsonObject).filter(each -> each.get("fed").getAsBoolean())
					.forEach(each -> lowest.merge(each.get("network").getAsString() + "#" + each.get("device").getAsString(), each.get("voltage_V").getAsDouble(),
							BinaryOperator.minBy(Double::compare)));
		}
		return lowest;
	}
}
