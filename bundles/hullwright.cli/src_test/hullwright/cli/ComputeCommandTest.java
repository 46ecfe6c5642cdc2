/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ComputeCommandTest {

	private static final Path EXAMPLES = Path.of("../hullwright.examples/examples");

	@TempDir
	Path folder;

	private static String example(String name) {
		return EXAMPLES.resolve(name).toString();
	}

	private Run computing(String text) throws IOException {
		Files.writeString(folder.resolve("boat.hull"), text);
		return Run.of("compute", folder.toString());
	}

	private static final String SKERRY = """
			import "standard:parts"
			series Skerry "Invented" {
			  %s
			  network bus {
			    backbone of light {
			      terminator left : endFemale
			      tee block : block4
			      terminator right : endMale
			    }
			    drop block.1 via 2 m of light to display : instrumentDisplay
			    drop block.2 via 2 m of light to second : instrumentDisplay
			    %s
			  }
			}
			""";

	@Test
	void aBoatIsToldWithItsWeakestDeviceFirst() {
		Run run = Run.of("compute", example("first-power-up"));
		assertEquals(0, run.status(), run.out());
		assertEquals("", run.err());
		assertTrue(run.out().startsWith("Starter revision A, no options (the boat with the fewest options; --with and --hull choose another)\n"), run.out());
		assertTrue(run.out().contains("  Weakest device: depth with 10.79 V, 1.79 V above the lowest that it works at"), run.out());
		assertTrue(run.out().contains("Short circuits at 5 places: all ended in time.\n"), run.out());
		assertTrue(run.out().contains("Assumed where the texts are silent\n"), run.out());
		assertTrue(run.out().contains("licensed electrician decide"), run.out());
	}

	@Test
	void figuresAreNoFinerThanTheyCanBe() {
		Run run = Run.of("compute", "--all", example("harbour-pilot"));
		assertTrue(run.out().contains("  Length: backbone 22 m; end to end 24 m (the longer of end cable and end drop) or 30 m (end drops added); its\n"
				+ "    cable allows 141 m.\n"), run.out());
		assertTrue(run.out().contains("the bit allows 1450 ns, another 268 m.\n"), run.out());
		assertTrue(Pattern.compile("\n  house \\(panelBreaker\\) +5 A +1\\.87 A").matcher(run.out()).find(), run.out());
		assertFalse(Pattern.compile("\\d\\d\\.\\d\\d A|\\d\\d\\.\\d\\d m|\\.0 s|0\\.0\\d mm2").matcher(run.out()).find(), run.out());
	}

	@Test
	void theCautionIsToldOnceForAllBoats() {
		Run run = Run.of("compute", example("first-power-up"), example("day-boat"));
		assertEquals(1, Pattern.compile("licensed electrician decide").matcher(run.out()).results().count());
		assertTrue(run.out().endsWith("isolate them before you work on wiring.\n"), run.out());
	}

	@Test
	void aBoatWithoutNetworkHasNothingToMeasure() throws IOException {
		Run run = computing("series Skerry \"Invented\" {\n}\n");
		assertEquals(0, run.status(), run.out());
		assertTrue(run.out().contains("\nNo network is declared.\n"), run.out());
		assertFalse(run.out().contains("Assumed"), run.out());
	}

	@Test
	void twoRunsPrintTheSameBytes() {
		assertEquals(Run.of("compute", "--format", "json", example("motor-yacht")).out(), Run.of("compute", "--format", "json", example("motor-yacht")).out());
		assertEquals(Run.of("compute", "--all", example("motor-yacht")).out(), Run.of("compute", "--all", example("motor-yacht")).out());
	}

	@Test
	void peopleAndProgramsReadTheSameFigures() {
		Matcher written = Pattern.compile("Weakest device: \\S+ with (\\S+) V").matcher(Run.of("compute", example("first-power-up")).out());
		assertTrue(written.find());
		String json = Run.of("compute", "--format", "json", example("first-power-up")).out();
		double least = Pattern.compile("\"belowHighest_V\"").splitAsStream(json)
				.flatMap(each -> Pattern.compile("\"voltage_V\": ([0-9.]+),\\s+\"shift_V\": [-0-9.E]+,\\s+\"current_A\": [0-9.]+,\\s+\"drop_V\"")
						.matcher(each).results())
				.mapToDouble(found -> Double.parseDouble(found.group(1))).min().orElseThrow();
		assertEquals(written.group(1), String.format(Locale.ROOT, "%.2f", least));
	}

	@Test
	void allLinesOfTheTablesAreShownWhenWanted() {
		assertTrue(Run.of("compute", example("harbour-pilot")).out().contains("more, none of them worse (--all shows them)\n"));
		assertFalse(Run.of("compute", "--all", example("harbour-pilot")).out().contains("--all shows them"));
	}

	@Test
	void onePowerStateCanBeChosen() {
		Run run = Run.of("compute", "--hull", "4", "--state", "keyOff", example("harbour-pilot"));
		assertEquals(0, run.status(), run.out());
		assertTrue(run.out().startsWith("Fabelholm38 revision C, hull 4\n"), run.out());
		assertTrue(run.out().contains("  No device is fed in any power state.\n"), run.out());
	}

	@Test
	void statesThatAreAlikeAreToldAsSuch() {
		assertTrue(Run.of("compute", example("day-boat")).out().replaceAll("\\s+", " ").contains("Power states: laid up, main switch off (no device on a network is fed); "
				+ "at anchor; under way (as at anchor); starting (the networks as under way). "));
		assertFalse(Run.of("compute", "--state", "underWay", example("day-boat")).out().contains("Power states"));
		assertFalse(Run.of("compute", example("first-power-up")).out().contains("Power states"));
	}

	@Test
	void anUnknownStateIsRefusedAndTheKnownOnesAreNamed() {
		Run run = Run.of("compute", "--state", "racing", example("harbour-pilot"));
		assertEquals(2, run.status());
		assertTrue(run.err().contains("there is no power state 'racing'; there are atAnchor, cranking, keyOff, underWay"), run.err());
	}

	@Test
	void aSeriesWithoutTheStateIsToldWhereAnotherHasIt() {
		Run run = Run.of("compute", "--state", "cranking", example("first-power-up"), example("harbour-pilot"));
		assertEquals(2, run.status());
		assertTrue(run.out().contains("Not computed: series Starter has no power state 'cranking'.\n"), run.out());
		assertTrue(run.out().contains("Fabelholm38 revision C"), run.out());
	}

	@Test
	void aNetworkWithoutSupplyIsOneProblem() throws IOException {
		Run run = computing(SKERRY.formatted("", ""));
		assertEquals(2, run.status());
		assertTrue(run.out().contains("boat.hull:10:38\n  nothing feeds display, second on bus: no supply enters there, or there is no way back to it.\n"), run.out());
		assertEquals(1, run.out().lines().filter(line -> line.startsWith("problem  ")).count(), run.out());
	}

	@Test
	void aTextWithProblemsIsToldWithItsPlace() throws IOException {
		Run run = computing(SKERRY.formatted("", "drop block.3 via 2 furlong of light to third : instrumentDisplay"));
		assertEquals(2, run.status());
		assertTrue(run.out().contains("boat.hull:12:"), run.out());
		assertTrue(run.out().contains("unknown unit 'furlong'"), run.out());
		assertTrue(run.out().contains("Not computed: boat.hull was read no further because of its problems.\n"), run.out());
	}

	@Test
	void whatIsNotThereIsRefused() {
		Run run = Run.of("compute", "nowhere.hull");
		assertEquals(2, run.status());
		assertTrue(run.err().contains("there is no file or folder nowhere.hull"), run.err());
	}

	@Test
	void anUnknownOptionIsRefused() {
		Run run = Run.of("compute", "--evrything", example("first-power-up"));
		assertEquals(2, run.status());
		assertTrue(run.err().contains("--evrything"), run.err());
		assertEquals("", run.out());
	}

	@Test
	void aFileThatIsNoTextIsNamed() throws IOException {
		Path file = Files.write(folder.resolve("boat.hull"), new byte[] { 's', 'e', (byte) 0xE9, 'i' });
		Run run = Run.of("compute", file.toString());
		assertEquals(2, run.status());
		assertTrue((run.out() + run.err()).contains("boat.hull"), run.out() + run.err());
		assertTrue((run.out() + run.err()).contains("UTF-8"), run.out() + run.err());
	}

	@Test
	void aFolderWithoutSeriesSaysSo() throws IOException {
		Run run = computing("profile Yard from standard {\n}\n");
		assertEquals(0, run.status(), run.out() + run.err());
		assertEquals("No series is declared here, so nothing was computed.\n", run.out());
	}
}
