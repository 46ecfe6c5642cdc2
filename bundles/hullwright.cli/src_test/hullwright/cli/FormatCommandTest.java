/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files are laid out in place, wholly or not at all. */
class FormatCommandTest {

	private static final String LOOSE = "catalog   Kit {\n  tee plain { }\n}";
	private static final String LAID_OUT = "catalog Kit {\n\ttee plain { }\n}\n";
	private static final String BROKEN = "catalog Kit {\n  tee {   }\n}\n";

	@TempDir
	private Path folder;

	private Path write(String file, String text) throws IOException {
		Files.createDirectories(folder.resolve(file).getParent());
		return Files.writeString(folder.resolve(file), text);
	}

	private List<String> files() throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.filter(Files::isRegularFile).map(file -> folder.relativize(file).toString()).sorted().toList();
		}
	}

	@Test
	void allFilesBelowAFolderAreLaidOutInPlace() throws IOException {
		write("kit.hull", LOOSE);
		write("sub/other.hull", LOOSE.replace("Kit", "Other"));
		write("notes.txt", "left   alone");
		Run run = Run.of("format", folder.toString());
		assertEquals(0, run.status(), run.toString());
		assertEquals("laid out  %1$s/kit.hull\nlaid out  %1$s/sub/other.hull\n2 files: 2 laid out\n".formatted(folder), run.out());
		assertEquals("", run.err());
		assertEquals(LAID_OUT, Files.readString(folder.resolve("kit.hull")));
		assertEquals(LAID_OUT.replace("Kit", "Other"), Files.readString(folder.resolve("sub/other.hull")));
		assertEquals(List.of("kit.hull", "notes.txt", "sub/other.hull"), files(), "nothing else is left behind");
	}

	@Test
	void aFileThatIsLaidOutIsNotTouched() throws IOException {
		Path file = write("kit.hull", LAID_OUT);
		FileTime longAgo = FileTime.from(Instant.parse("2020-01-01T00:00:00Z"));
		Files.setLastModifiedTime(file, longAgo);
		Run run = Run.of("format", file.toString());
		assertEquals("1 file: 1 as it should be\n", run.out());
		assertEquals(0, run.status());
		assertEquals(longAgo, Files.getLastModifiedTime(file));
	}

	@Test
	void checkChangesNothingAndNamesWhatWouldChange() throws IOException {
		write("kit.hull", LAID_OUT);
		write("loose.hull", LOOSE);
		Run run = Run.of("format", "--check", folder.toString());
		assertEquals(1, run.status());
		assertEquals("would change  %s/loose.hull\n2 files: 1 would change, 1 would not\n".formatted(folder), run.out());
		assertEquals(LOOSE, Files.readString(folder.resolve("loose.hull")));
		assertEquals(0, Run.of("format", "--check", folder.resolve("kit.hull").toString()).status());
	}

	@Test
	void aBrokenFileIsNamedAndLeftAloneAndStopsNoOther() throws IOException {
		write("a-broken.hull", BROKEN);
		write("b-loose.hull", LOOSE);
		Run run = Run.of("format", folder.toString());
		assertEquals(2, run.status());
		assertTrue(run.err().startsWith("hullwright: " + folder + "/a-broken.hull:2:7: "), run.err());
		assertTrue(run.out().endsWith("2 files: 1 laid out, 1 left alone\n"), run.out());
		assertEquals(BROKEN, Files.readString(folder.resolve("a-broken.hull")));
		assertEquals(LAID_OUT, Files.readString(folder.resolve("b-loose.hull")));
	}

	@Test
	void aBrokenFileBeatsOneThatWouldChange() throws IOException {
		write("a-broken.hull", BROKEN);
		write("b-loose.hull", LOOSE);
		assertEquals(2, Run.of("format", "--check", folder.toString()).status());
	}

	@Test
	void oneFileMeansThatFileOnly() throws IOException {
		write("one.hull", LOOSE);
		write("other.hull", LOOSE);
		assertEquals(0, Run.of("format", folder.resolve("one.hull").toString()).status());
		assertEquals(LOOSE, Files.readString(folder.resolve("other.hull")));
	}

	@Test
	void aFileInAnotherEncodingIsLeftAlone() throws IOException {
		byte[] latin = "catalog Kit {\n// Gr\u00f6\u00dfe\n}".getBytes(StandardCharsets.ISO_8859_1);
		Files.write(folder.resolve("latin.hull"), latin);
		Run run = Run.of("format", folder.toString());
		assertEquals(2, run.status());
		assertEquals("hullwright: " + folder + "/latin.hull:1:1: the file is not in UTF-8: see line 2; save it in UTF-8\n", run.err());
		assertArrayEquals(latin, Files.readAllBytes(folder.resolve("latin.hull")));
	}

	@Test
	void aLinkOutOfTheFolderIsNotFollowed() throws IOException {
		Path outside = Files.createTempFile("outside", ".hull");
		try {
			Files.writeString(outside, LOOSE);
			Files.createSymbolicLink(folder.resolve("link.hull"), outside);
			Run run = Run.of("format", folder.toString());
			assertEquals(2, run.status());
			assertTrue(run.err().contains("link.hull:1:1: the file is a link to a place outside the project"), run.err());
			assertEquals(LOOSE, Files.readString(outside));
		} finally {
			Files.delete(outside);
		}
	}

	@Test
	void aLinkWithinTheFolderStaysALink() throws IOException {
		Path file = write("z.hull", LOOSE);
		Path link = Files.createSymbolicLink(folder.resolve("a.hull"), file);
		Run run = Run.of("format", folder.toString());
		assertEquals(0, run.status(), run.toString());
		assertTrue(run.out().endsWith("1 file: 1 laid out\n"), run.out());
		assertTrue(Files.isSymbolicLink(link));
		assertEquals(LAID_OUT, Files.readString(file));
	}

	@Test
	void permissionsStay() throws IOException {
		Path file = write("kit.hull", LOOSE);
		assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
		Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-x---"));
		assertEquals(0, Run.of("format", file.toString()).status());
		assertEquals(LAID_OUT, Files.readString(file));
		assertEquals("rwxr-x---", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
	}

	@Test
	void aFileThatChangedSinceItWasReadIsLeftAlone() throws IOException {
		Path file = write("kit.hull", "catalog Other { }\n");
		IOException refused = assertThrows(IOException.class,
				() -> new FileReplacement(file, LOOSE.getBytes(StandardCharsets.UTF_8)).by(LAID_OUT.getBytes(StandardCharsets.UTF_8)));
		assertEquals("the file was changed meanwhile; lay it out again", refused.getMessage());
		assertEquals("catalog Other { }\n", Files.readString(file));
		assertEquals(List.of("kit.hull"), files());
	}

	@Test
	void windowsLineEndsAndAByteOrderMarkStay() throws IOException {
		Path file = write("kit.hull", "\uFEFF" + LOOSE.replace("\n", "\r\n"));
		assertEquals(0, Run.of("format", file.toString()).status());
		assertEquals("\uFEFF" + LAID_OUT.replace("\n", "\r\n"), Files.readString(file));
	}

	@Test
	void withoutAPathNothingIsLaidOut() {
		Run run = Run.of("format");
		assertEquals(2, run.status());
		assertTrue(run.err().contains("PATH") && run.err().contains("Try 'hullwright format --help'."), run.err());
	}

	@Test
	void aFolderWithoutFilesIsRefused() {
		Run run = Run.of("format", folder.toString());
		assertEquals(2, run.status());
		assertEquals("hullwright: there are no .hull files in " + folder + "\n", run.err());
		assertFalse(run.out().contains("file"), run.out());
	}
}
