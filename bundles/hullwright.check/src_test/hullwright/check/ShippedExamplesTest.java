/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.SeriesCoverage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The examples as a new user meets them: the good boats give no false alarm in any boat that can be ordered, the faulty one
 * gives one finding for each mistake that its text names.
 */
class ShippedExamplesTest {

	private static final Path EXAMPLES = Path.of("../hullwright.examples/examples");
	private static final LocalDate TODAY = LocalDate.of(2030, 1, 1);

	@Test
	void noBoatOfThePilotSeriesHasAFinding() throws IOException {
		CheckReport report = check("harbour-pilot");
		assertEquals(List.of(), describe(report));
		SeriesCoverage series = report.series().get(0);
		// by hand: two engine choices, times autopilot or not, times plain, low bridges or flying bridge, and the upper head where it may be
		assertEquals(14 + 4, series.checked());
		assertEquals(series.total(), series.checked());
		assertTrue(series.devices() >= 25, series.devices() + " devices");
	}

	@Test
	void theFirstNetworkHasNoFinding() throws IOException {
		assertEquals(List.of(), describe(check("first-power-up")));
	}

	@Test
	void theFaultyLaunchHasTheThreeMistakesThatItNames() throws IOException {
		assertEquals(List.of(
				"cabling/backbone-too-long when quayDisplay and towedSled",
				"cabling/terminator-missing when towedSled",
				"cabling/drop-too-long"), describe(check("faulty")));
	}

	@Test
	void eachMistakeIsFoundWhereItsCommentStands() throws IOException {
		String text = Files.readString(EXAMPLES.resolve("faulty/survey-launch.hull"));
		Matcher comments = Pattern.compile("// MISTAKE .*").matcher(text);
		List<Integer> linesBelow = new ArrayList<>();
		while (comments.find()) {
			linesBelow.add((int) text.substring(0, comments.end()).lines().count() + 1);
		}
		assertEquals(3, linesBelow.size());
		List<Integer> found = check("faulty").findings().stream().map(reported -> reported.finding().origin().line()).toList();
		assertEquals(linesBelow.get(0), found.get(0), "the backbone");
		assertTrue(found.get(1) > linesBelow.get(1) && found.get(1) <= linesBelow.get(1) + 2, "the open end, at its last part: line " + found.get(1));
		assertEquals(linesBelow.get(2), found.get(2), "the drop");
	}

	private static CheckReport check(String example) throws IOException {
		CheckReport report = Checker.create().check(CheckRequest.ofAll(Snapshot.ofFolder(EXAMPLES.resolve(example)), TODAY));
		assertTrue(report.complete(), report.gaps().toString());
		assertTrue(report.rules().size() >= 3, "the rules of the house must run, or no finding means nothing: " + report.rules());
		return report;
	}

	private static List<String> describe(CheckReport report) {
		return report.findings().stream().map(ShippedExamplesTest::describe).toList();
	}

	private static String describe(ReportedFinding reported) {
		String condition = reported.occurrence().condition();
		return reported.finding().rule() + (condition.isEmpty() ? "" : " when " + condition);
	}
}
