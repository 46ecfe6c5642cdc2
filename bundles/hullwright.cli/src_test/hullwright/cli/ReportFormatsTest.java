/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReportFormatsTest {

	private static final String FAULTY = "../hullwright.examples/examples/faulty";

	@TempDir
	Path folder;

	@ParameterizedTest
	@CsvSource({ "sarif, '\"version\": \"2.1.0\"'", "junit, '<testsuites name=\"Hullwright\" tests='", "markdown, '**3 errors.**'", "json, hullwright-report" })
	void eachFormatIsWrittenToTheTerminalOrToAFile(String format, String holds) throws IOException {
		Run run = Run.of("check", "--format", format, FAULTY);
		assertEquals(1, run.status(), run.err());
		assertTrue(run.out().contains(holds), run.out());
		Path file = folder.resolve("report");
		Run toFile = Run.of("check", "--format", format, "--output", file.toString(), FAULTY);
		assertEquals(1, toFile.status(), toFile.err());
		assertEquals("", toFile.out());
		assertEquals(run.out(), Files.readString(file));
	}

	@Test
	void placesAreThoseOfTheRepository() throws IOException {
		Path project = Files.createDirectories(folder.resolve("repository/yards/north"));
		Files.createDirectory(folder.resolve("repository/.git"));
		Files.writeString(project.resolve("boat.hull"), "series {");
		Run run = Run.of("check", "--format", "sarif", project.toString());
		assertTrue(run.out().contains("\"uri\": \"yards/north/boat.hull\""), run.out());
	}

	@Test
	void whatCannotBeWrittenIsRefused() {
		Run missing = Run.of("check", "--output", folder.resolve("none/report.txt").toString(), FAULTY);
		assertEquals(2, missing.status());
		assertEquals("hullwright: " + folder.resolve("none/report.txt") + " cannot be written: there is no folder " + folder.resolve("none") + "\n", missing.err());
		assertEquals("", missing.out());
		Run folderItself = Run.of("check", "--output", folder.toString(), FAULTY);
		assertEquals(2, folderItself.status());
		assertTrue(folderItself.err().contains("it is a folder"), folderItself.err());
		assertFalse(Files.exists(folder.resolve("none")));
	}

	@Test
	void aReportTakesThePlaceOfAnotherAndNothingIsLeftBeside() throws IOException {
		Path file = Files.writeString(folder.resolve("report.md"), "before");
		Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
		Path link = Files.createSymbolicLink(folder.resolve("latest.md"), file.getFileName());
		assertEquals(1, Run.of("check", "--format", "markdown", "--output", link.toString(), FAULTY).status());
		assertTrue(Files.readString(file).startsWith("# Check of "));
		assertTrue(Files.isSymbolicLink(link));
		assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
		try (Stream<Path> files = Files.list(folder)) {
			assertEquals(2, files.count());
		}
	}

	@Test
	void aDeviceIsWrittenToAndStaysOne() {
		assumeTrue(Files.exists(Path.of("/dev/null")));
		assertEquals(1, Run.of("check", "--output", "/dev/null", FAULTY).status());
		assertFalse(Files.isRegularFile(Path.of("/dev/null")));
	}

	@Test
	void withoutARepositoryPlacesStartWhereTheCommandWasGiven() {
		assertEquals("yards/north", RepositoryRoot.pathTo(Path.of("yards/north"), folder));
		assertEquals("", RepositoryRoot.pathTo(Path.of(""), folder));
		assertEquals("", RepositoryRoot.pathTo(folder.resolve("elsewhere"), folder.resolve("here")));
	}

	@Test
	void whatDoesNotCountAndWhatWasReadIsListedOnDemand() {
		Run run = Run.of("check", "--files", FAULTY);
		assertTrue(run.out().contains("  standard:parts (catalog)\n"), run.out());
		assertFalse(Run.of("check", "--set-aside", FAULTY).out().contains("standard:parts (catalog)"));
	}

	@Test
	void figuresHaveNoTestResults() {
		Run run = Run.of("compute", "--format", "sarif", FAULTY);
		assertEquals(2, run.status());
		assertTrue(run.err().contains("figures are written as text or json, not as sarif"), run.err());
	}
}
