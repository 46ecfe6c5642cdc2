/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AcceptCommandTest {

	private static final Path FAULTY = Path.of("../hullwright.examples/examples/faulty");

	@TempDir
	Path folder;

	private Path boat;

	@BeforeEach
	void copy() throws IOException {
		try (DirectoryStream<Path> files = Files.newDirectoryStream(FAULTY, "*.hull")) {
			for (Path file : files) {
				Files.copy(file, folder.resolve(file.getFileName().toString()));
			}
		}
		boat = folder.resolve("survey-launch.hull");
	}

	@Test
	void whatIsAcceptedIsNotToldAgain() throws IOException {
		Run accepting = Run.of("accept", folder.toString());
		assertEquals(0, accepting.status(), accepting.err());
		assertTrue(accepting.out().startsWith("3 findings accepted in "), accepting.out());
		Path baseline = folder.resolve("baseline.json");
		Run check = Run.of("check", "--baseline", baseline.toString(), folder.toString());
		assertEquals(0, check.status(), check.out());
		assertTrue(check.out().contains("Not counted: 3 in the baseline.\n"), check.out());

		Files.writeString(boat, Files.readString(boat).replace("via 6 m of light to air", "via 9 m of light to air"));
		Run worse = Run.of("check", "--baseline", baseline.toString(), folder.toString());
		assertEquals(1, worse.status(), worse.out());
		assertTrue(worse.out().contains("the drop to air is 9.8 m long"), worse.out());
		assertTrue(worse.out().contains("1 error.\nNot counted: 2 in the baseline.\n"), worse.out());
	}

	@Test
	void acceptingAgainKeepsTheToleranceAndTellsTheSame() throws IOException {
		Path baseline = folder.resolve("baseline.json");
		Run.of("accept", "--tolerance", "5", folder.toString());
		String first = Files.readString(baseline);
		assertTrue(first.contains("\"tolerance_share\": 0.05"), first);
		Run.of("accept", folder.toString());
		assertEquals(first, Files.readString(baseline));
	}

	@Test
	void whatIsNoBaselineIsNeitherReadNorWrittenOver() throws IOException {
		Path notes = Files.writeString(folder.resolve("notes.json"), "{\"mine\": true}");
		Run check = Run.of("check", "--baseline", notes.toString(), folder.toString());
		assertEquals(2, check.status());
		assertTrue(check.err().contains("notes.json is no baseline: 'format' is missing"), check.err());
		Run accept = Run.of("accept", "--to", notes.toString(), folder.toString());
		assertEquals(2, accept.status());
		assertEquals("{\"mine\": true}", Files.readString(notes));
	}

	@Test
	void aBaselineThatIsNotThereIsRefused() {
		Run check = Run.of("check", "--baseline", folder.resolve("none.json").toString(), folder.toString());
		assertEquals(2, check.status());
		assertTrue(check.err().contains("there is no baseline "), check.err());
	}

	@Test
	void nothingIsAcceptedWhereNotEverythingCouldBeChecked() throws IOException {
		Files.writeString(folder.resolve("broken.hull"), "series {");
		Run accept = Run.of("accept", folder.toString());
		assertEquals(2, accept.status());
		assertTrue(accept.err().contains("nothing was accepted"), accept.err());
		assertFalse(Files.exists(folder.resolve("baseline.json")));
	}

	@Test
	void aFolderThatIsNotThereIsNamed() {
		Run accept = Run.of("accept", "--to", folder.resolve("lists/today.json").toString(), folder.toString());
		assertEquals(2, accept.status());
		assertTrue(accept.err().contains("there is no folder "), accept.err());
	}
}
