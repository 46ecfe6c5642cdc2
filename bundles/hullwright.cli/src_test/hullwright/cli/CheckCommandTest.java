/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * {@code hullwright check} as a person or a script meets it.
 */
class CheckCommandTest {

	private static final Path EXAMPLES = Path.of("../hullwright.examples/examples");

	private static String example(String name) {
		return EXAMPLES.resolve(name).toString();
	}

	@Test
	void aGoodBoatEndsWithZero() {
		Run run = Run.of("check", example("day-boat"));
		assertEquals(0, run.status(), run.out());
		assertTrue(run.out().startsWith("No findings.\n"), run.out());
		assertTrue(run.out().contains("all 2 combinations of options and all 2 sold hulls checked"), run.out());
		assertEquals("", run.err());
	}

	@Test
	void aFindingShowsElementMeasuredValueLimitAndSource() {
		Run run = Run.of("check", example("faulty"));
		assertEquals(1, run.status());
		assertTrue(run.out().contains("survey-launch.hull:74:38\n"
				+ "         the drop to air is 6.8 m long; the limit is 6 m\n"
				+ "         source: public cabling guide of a cable maker (N2-A), section 1.4: 6 m from tee to device\n"
				+ "         rule cabling/drop-too-long, element Fabelholm22.instruments.air\n"), run.out());
		assertTrue(run.out().contains("         when towedSled\n"), run.out());
		assertTrue(run.out().contains("3 errors.\n"), run.out());
	}

	@Test
	void oneBoatCanBeChosenByItsOptionsOrItsHull() {
		assertTrue(Run.of("check", "--with", "towedSled", example("faulty")).out().contains("2 errors.\n"));
		assertTrue(Run.of("check", "--base", example("faulty")).out().contains("1 error.\n"));
		assertTrue(Run.of("check", "--hull", "1", example("faulty")).out().contains("1 sold hull checked"));
	}

	@Test
	void whatCannotBeChosenIsRefusedAndNeverClean() {
		Run option = Run.of("check", "--with", "helipad", example("faulty"));
		assertEquals(2, option.status());
		assertTrue(option.out().contains("Not checked: series Fabelholm22: there is no option 'helipad'."), option.out());
		Run hull = Run.of("check", "--hull", "99", example("faulty"));
		assertEquals(2, hull.status());
		assertTrue(hull.out().contains("Not checked: series Fabelholm22 has no hull '99'."), hull.out());
		assertEquals(2, Run.of("check", "--hull", "1", "--with", "towedSled", example("faulty")).status());
	}

	@Test
	void theCallerDecidesWhatFails() {
		assertEquals(1, Run.of("check", "--fail-on", "error", example("faulty")).status());
		assertEquals(0, Run.of("check", "--fail-on", "never", example("faulty")).status());
		assertEquals(2, Run.of("check", "--fail-on", "never", "--hull", "99", example("faulty")).status());
	}

	@Test
	void aFolderOfProjectsIsCheckedProjectByProject() {
		Run run = Run.of("check", EXAMPLES.toString());
		assertEquals(2, run.status(), "one of the projects has texts that cannot be understood, and 2 beats 1");
		assertTrue(run.out().contains("Project " + example("faulty-text") + "\n"), run.out());
		assertTrue(run.out().contains("Project " + example("faulty") + "\n"), run.out());
		assertTrue(run.out().contains("Project " + example("harbour-pilot") + "\n"), run.out());
		assertFalse(run.out().contains("two-profiles"), run.out());
	}

	@Test
	void aFileIsCheckedWithinItsProject() {
		Run run = Run.of("check", example("faulty/survey-launch.hull"));
		assertEquals(1, run.status());
		assertTrue(run.out().contains("3 errors.\n"), run.out());
		Run catalog = Run.of("check", example("faulty/kit.hull"));
		assertEquals(0, catalog.status());
		assertTrue(catalog.out().contains("No series is declared here, so no boat was checked.\n"), catalog.out());
	}

	@Test
	void jsonIsOneDocumentWithQuantitiesInSiUnits() {
		Run run = Run.of("check", "--format", "json", "--as-of", "2031-02-03", example("faulty"), example("first-power-up"));
		assertEquals(1, run.status());
		JsonObject report = JsonParser.parseString(run.out()).getAsJsonObject();
		assertEquals(2, report.getAsJsonArray("projects").size());
		JsonObject project = report.getAsJsonArray("projects").get(0).getAsJsonObject();
		assertEquals("2031-02-03", project.get("asOf").getAsString());
		JsonObject drop = project.getAsJsonArray("findings").get(2).getAsJsonObject();
		assertEquals(6.8, drop.getAsJsonObject("values").get("length_m").getAsDouble());
		assertEquals(6, drop.getAsJsonObject("values").get("limit_m").getAsInt());
	}

	@Test
	void colourIsForTerminalsOnly() {
		assertFalse(Run.of("check", example("faulty")).out().contains("\u001b"));
		assertTrue(Run.of(true, "check", example("faulty")).out().contains("\u001b[31;1merror"));
	}

	@Test
	void slipsOfTheFingerGetOneLine() {
		Run run = Run.of("chek");
		assertEquals(2, run.status());
		assertEquals("", run.out());
		assertEquals("hullwright: Unmatched argument at index 0: 'chek'; did you mean 'check'?\nTry 'hullwright --help'.\n", run.err());
		assertEquals(2, Run.of("check", "--as-of", "tomorrow").status());
		assertEquals(2, Run.of("check", "--format", "xml").status());
	}

	@Test
	void explainShowsThePageAndListsTheRules() {
		assertTrue(Run.of("explain", "cabling/drop-too-long").out().startsWith("# Drop too long\n"));
		assertTrue(Run.of("explain").out().contains("cabling/terminator-missing         Terminator missing\n"));
		Run unknown = Run.of("explain", "cabling/nothing-such");
		assertEquals(2, unknown.status());
		assertEquals("hullwright: there is no rule 'cabling/nothing-such'; 'hullwright explain' lists them\n", unknown.err());
	}

	@Test
	void helpSaysWhatToDoAndCautions() {
		Run run = Run.of("help");
		assertEquals(0, run.status());
		assertTrue(run.out().contains("check") && run.out().contains("explain"), run.out());
		assertTrue(run.out().contains("Isolate batteries"), run.out());
		assertEquals(run, Run.of(), "without anything it says the same");
	}

	@Test
	void noLineIsWiderThanAPage() {
		Run run = Run.of("check", "../hullwright.examples/examples/faulty", "../hullwright.examples/examples/faulty-text");
		assertTrue(run.out().contains("\n         source: "), run.out());
		run.out().lines().forEach(line -> assertTrue(line.length() <= 110, line));
	}
}
