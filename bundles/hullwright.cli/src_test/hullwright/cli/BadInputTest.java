/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever lies in a folder, the program says what is wrong with which file and line, never shows a stack trace, never calls
 * it clean, and writes nothing.
 */
class BadInputTest {

	@TempDir
	private Path folder;
	private List<String> writtenByTheTest;

	private Run check(String file, byte[] content) throws IOException {
		Files.write(folder.resolve(file), content);
		return check();
	}

	private Run check(String file, String content) throws IOException {
		return check(file, content.getBytes(StandardCharsets.UTF_8));
	}

	private Run check() throws IOException {
		writtenByTheTest = list();
		Run run = Run.of("check", folder.toString());
		assertFalse((run.out() + run.err()).contains("\tat "), "a stack trace: " + run);
		assertFalse((run.out() + run.err()).contains("Exception"), run.toString());
		return run;
	}

	private List<String> list() throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.map(Path::toString).sorted().toList();
		}
	}

	@AfterEach
	void nothingIsWritten() throws IOException {
		assertEquals(writtenByTheTest, list());
	}

	private static void assertIncomplete(Run run, String place, String message) {
		assertEquals(2, run.status(), run.toString());
		assertTrue(run.out().contains(place + "\n"), run.out());
		assertTrue(run.out().contains(message), run.out());
	}

	@Test
	void aFileThatIsNotThere() throws IOException {
		writtenByTheTest = list();
		Run run = Run.of("check", folder.resolve("nowhere.hull").toString());
		assertEquals(2, run.status());
		assertEquals("hullwright: there is no file or folder " + folder.resolve("nowhere.hull") + "\n", run.err());
	}

	@Test
	void aFolderWithoutAnything() throws IOException {
		Run run = check();
		assertEquals(2, run.status());
		assertEquals("hullwright: there are no .hull files in " + folder + "\n", run.err());
	}

	@Test
	void anEmptyFile() throws IOException {
		Run run = check("empty.hull", "");
		assertEquals(0, run.status());
		assertTrue(run.out().contains("no boat was checked"), run.out());
	}

	@Test
	void aFileInAnotherEncoding() throws IOException {
		assertIncomplete(check("latin.hull", "catalog Kit \"ok\" {\n// Gr\u00f6\u00dfe\n}".getBytes(StandardCharsets.ISO_8859_1)),
				"latin.hull:1:1", "is not in UTF-8: see line 2; save it in UTF-8");
	}

	@Test
	void aBinaryFile() throws IOException {
		byte[] noise = new byte[3000];
		new Random(7).nextBytes(noise);
		assertIncomplete(check("noise.hull", noise), "noise.hull:1:1", "the file is no text: it has a zero byte in line ");
	}

	@Test
	void aFileOfTenMegabytes() throws IOException {
		assertIncomplete(check("huge.hull", new byte[10_000_000]), "huge.hull:1:1", "is too large: 10.0 MB, and a .hull file may have 5 MB");
	}

	@Test
	void filesThatImportEachOther() throws IOException {
		Files.writeString(folder.resolve("b.hull"), "import \"a.hull\"\ncatalog B { }\n");
		Run run = check("a.hull", "import \"b.hull\"\ncatalog A { }\n");
		assertEquals(1, run.status(), "everything can be checked all the same");
		assertTrue(run.out().contains("a.hull:1:8\n         the files import each other in a circle: 'b.hull' leads back to this file"), run.out());
	}

	@Test
	void aFileOutsideTheProject() throws IOException {
		Path outside = Files.createTempFile("outside", ".hull");
		try {
			Files.writeString(outside, "catalog Outside { }");
			assertIncomplete(check("a.hull", "import \"../" + outside.getFileName() + "\"\n"), "a.hull:1:8", "to import in this project");
			Files.delete(folder.resolve("a.hull"));
			Files.createSymbolicLink(folder.resolve("link.hull"), outside);
			assertIncomplete(check(), "link.hull:1:1", "is a link to a place outside the project, which a spec may not read");
		} finally {
			Files.delete(outside);
		}
	}

	@Test
	void anUnknownUnit() throws IOException {
		assertIncomplete(check("boat.hull", "catalog Kit {\n  cable thin {\n    backbone up to 100 fathoms\n  }\n}\n"),
				"boat.hull:3:20", "unknown unit 'fathoms'; a length is given in m, mm, cm, km, ft or in");
	}

	@Test
	void twoThingsOfOneName() throws IOException {
		assertIncomplete(check("boat.hull", "catalog Kit {\n  tee t { }\n  tee t { }\n}\n"), "boat.hull:3:7", "the name 't' is taken");
	}

	@Test
	void aReferenceToNothing() throws IOException {
		assertIncomplete(check("boat.hull", "import \"standard:parts\"\nseries S {\n  network n {\n    backbone of lihgt { }\n  }\n}\n"),
				"boat.hull:4:17", "no cable 'lihgt' in Standard; did you mean 'light'?");
	}

	@Test
	void aBrokenFileKeepsNothingFromBeingCheckedThatDoesNotNeedIt() throws IOException {
		Files.writeString(folder.resolve("broken.hull"), "series {");
		Run run = check("good.hull", """
				import "standard:parts"
				series Good { supply house { 12 V; fuse 3 A }
				  network n {
				    backbone of light {
				      terminator left : endFemale tap inlet : plainTap from house earths shield
				      tee t : tee1
				    }
				  }
				}
				""");
		assertEquals(2, run.status());
		assertTrue(run.out().contains("no terminator at the end of the backbone, beyond t"), run.out());
		assertTrue(run.out().contains("Not checked: broken.hull"), run.out());
	}

	@Test
	void anEndlessTextOfOneKindIsToldInAFewFindings() throws IOException {
		Run run = check("boat.hull", "series S { ".repeat(2000));
		assertEquals(2, run.status());
		assertTrue(run.out().lines().filter(line -> line.startsWith("error")).count() < 12, run.out());
	}
}
