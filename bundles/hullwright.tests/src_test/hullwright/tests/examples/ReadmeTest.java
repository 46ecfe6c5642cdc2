/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.Figures;
import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.report.ProjectReport;
import hullwright.report.TextReport;
import hullwright.report.figures.FiguresText;
import hullwright.report.figures.ProjectFigures;
import hullwright.rules.report.CheckReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What the README shows is true.
 */
class ReadmeTest {

	private static final Path README = Path.of("..", "..", "README.md");
	private static final LocalDate DAY = LocalDate.of(2030, 1, 1);

	@Test
	void theBoatOfTheReadmeIsClean() throws IOException {
		Matcher text = Pattern.compile("(?ms)^```\\n(import .*?)^```").matcher(Files.readString(README));
		assertTrue(text.find(), "the README shows a text");
		CheckReport report = Checker.create().check(CheckRequest.ofAll(Snapshot.of(Map.of("readme.hull", text.group(1))), DAY));
		assertEquals(List.of(), report.findings());
		assertEquals(List.of(), report.gaps());
		assertEquals(2, report.series().get(0).combinations());
	}

	@Test
	void theFindingOfTheReadmeIsReal() throws IOException {
		Path faulty = Path.of("..", "hullwright.examples", "examples", "faulty");
		CheckReport report = Checker.create().check(CheckRequest.ofAll(Snapshot.ofFolder(faulty), DAY));
		String printed = TextReport.of(List.of(new ProjectReport("bundles/hullwright.examples/examples/faulty", report)), false, Set.of());
		Matcher shown = Pattern.compile("(?m)^    (error .*(?:\\n     .*)+)").matcher(Files.readString(README));
		assertTrue(shown.find(), "the README shows a finding");
		assertTrue(printed.contains(shown.group(1).replace("\n    ", "\n") + "\n"), printed);
	}

	@Test
	void theFiguresOfTheReadmeAreReal() throws IOException {
		Path starter = Path.of("..", "hullwright.examples", "examples", "first-power-up");
		BoatsRead read = Checker.create().boats(new CheckRequest(Snapshot.ofFolder(starter), Set.of(), new WantedBoats.Plainest(), DAY));
		String printed = FiguresText.of(List.of(new ProjectFigures("", read.boats().stream().map(Figures::new).toList(), read.problems(), read.gaps(), true)),
				false);
		Matcher shown = Pattern.compile("(?ms)^`releng/hullwright compute [^`]*first-power-up` begins with\\n\\n```\\n(.*?)^```").matcher(Files.readString(README));
		assertTrue(shown.find(), "the README shows figures");
		assertTrue(printed.startsWith(shown.group(1)), printed);
	}
}
