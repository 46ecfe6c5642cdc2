/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every voltage and current that stands in a table for people, held against what programs read of the same boat: the figure of the
 * worst power state, to the last digit that is printed, for every row and for no other.
 */
class PrintedFiguresTest {

	private static final Path EXAMPLES = Path.of("..", "hullwright.examples", "examples");

	/** A boat as both read it. */
	private record Both(String page, WorstFigures json) {
	}

	private static final Map<String, Both> READ = new ConcurrentHashMap<>();

	private static Both read(String example) throws IOException {
		if (!READ.containsKey(example)) {
			BoatsRead read = Checker.create().boats(new CheckRequest(Snapshot.ofFolder(EXAMPLES.resolve(example)), Set.of(), new WantedBoats.Plainest(),
					LocalDate.EPOCH));
			List<ProjectFigures> figures = List.of(new ProjectFigures("boat", read.boats().stream().map(Figures::new).toList(), read.problems(),
					read.gaps(), false));
			READ.put(example, new Both(FiguresText.of(figures, true), new WorstFigures(JsonParser.parseString(FiguresJson.of(figures)).getAsJsonObject()
					.getAsJsonArray("projects").get(0).getAsJsonObject().getAsJsonArray("boats").get(0).getAsJsonObject())));
		}
		return READ.get(example);
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void voltagesAtDevices(String example) throws IOException {
		assertSame(read(example).json().devices(), printed(example, "Voltages at the devices", true, "Lowest", "Starting", "Usual", "Highest", "Above limit",
				"Drop", "Return", "Draws"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void supplies(String example) throws IOException {
		assertSame(read(example).json().entries(), printed(example, "Supplies", true, "Current", "Voltage there", "Return there"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void cablesAndContacts(String example) throws IOException {
		assertSame(read(example).json().spans(), printed(example, "Cables and contacts", true, "Supply", "Return", "Rated", "Used"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void fuses(String example) throws IOException {
		assertSame(read(example).json().fuses(), printed(example, "Fuses and breakers", false, "Rated", "Carries", "Starting", "Used", "Asked to break"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void banksAndConverters(String example) throws IOException {
		assertSame(read(example).json().sources(), printed(example, "Banks and converters", false, "Open voltage", "Gives"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void dropsByTheSimpleFormula(String example) throws IOException {
		assertSame(read(example).json().simpleDrops(), printed(example, "The simple formula", true, "Length", "Drop by formula"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void leads(String example) throws IOException {
		assertSame(read(example).json().leads(), printed(example, "Leads by the feed-wire formula", false, "Length", "Sized for"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void shortCircuitsAreThoseOfOneState(String example) throws IOException {
		Map<String, List<Double>> computed = read(example).json().shortCircuits();
		Map<String, List<String>> printed = printed(example, "Short circuits", true, "Current");
		assertFalse(printed.isEmpty(), "there are short circuits");
		printed.forEach((place, figures) -> assertTrue(computed.getOrDefault(place, List.of()).stream().anyMatch(each -> rounds(each, figures.get(0))),
				place + ": " + figures + " of " + computed.get(place)));
	}

	/** By network, name and head, what stands in the tables; what is not known left out. */
	private static Map<String, List<String>> printed(String example, String title, boolean byNetwork, String... heads) throws IOException {
		Map<String, List<String>> printed = new TreeMap<>();
		for (PrintedTable table : PrintedTable.in(read(example).page(), title)) {
			for (String row : table.rows()) {
				for (String head : heads) {
					String figure = table.figure(row, head).replace(" *", "").replace(" !", "");
					if (!figure.equals("-") && !figure.isEmpty()) {
						String name = PrintedTable.name(row).replaceFirst(" \\(.*", "");
						printed.computeIfAbsent(WorstFigures.key(byNetwork ? table.network() : "", name, head), none -> new ArrayList<>()).add(figure);
					}
				}
			}
		}
		return printed;
	}

	private static void assertSame(Map<String, List<Double>> computed, Map<String, List<String>> printed) {
		assertFalse(computed.isEmpty(), "there are figures");
		assertEquals(computed.keySet(), printed.keySet());
		computed.forEach((key, figures) -> {
			List<Double> expected = figures.stream().sorted().toList();
			List<String> read = printed.get(key).stream().sorted(Comparator.comparingDouble(PrintedFiguresTest::number)).toList();
			assertEquals(expected.size(), read.size(), key);
			for (int i = 0; i < read.size(); i++) {
				assertTrue(rounds(expected.get(i), read.get(i)), key + ": " + read.get(i) + " for " + expected.get(i));
			}
		});
		assertEquals(count(computed.values()), count(printed.values()));
	}

	private static int count(Collection<? extends Collection<?>> lists) {
		return lists.stream().mapToInt(Collection::size).sum();
	}

	private static double number(String figure) {
		return Double.parseDouble(figure.split(" ")[0]);
	}

	/** Whether a figure is what that number is to its last digit; half of it either way, for numbers that lie between. */
	private static boolean rounds(double number, String figure) {
		String digits = figure.split(" ")[0];
		int decimals = digits.contains(".") ? digits.length() - digits.indexOf('.') - 1 : 0;
		return Math.abs(number - number(figure)) <= 0.5 * Math.pow(10, -decimals) + 1e-9;
	}
}
