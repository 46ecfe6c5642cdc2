/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code check --fix} on files.
 */
class MendingFilesTest {

	@TempDir
	Path folder;

	private static final String BOAT = """
			import "standard:parts"
			series Skerry "Invented" { supply house { 12 V; fuse 3 A }
			  network bus {
			    backbone of light {
			      terminator left : endFemale
			      tee bow : block4 tap inlet : plainTap from house earths shield
			      cable 10 m
			      terminator right : endMale
			    }
			    drop bow.1 via 2 m of light to display : instrumentDisplay
			  }
			}
			""";

	private Run fixing(String text, String... options) throws IOException {
		Path file = folder.resolve("boat.hull");
		Files.writeString(file, text);
		String[] arguments = new String[options.length + 2];
		arguments[0] = "check";
		System.arraycopy(options, 0, arguments, 1, options.length);
		arguments[options.length + 1] = file.toString();
		return Run.of(arguments);
	}

	private String written() throws IOException {
		return Files.readString(folder.resolve("boat.hull"));
	}

	@Test
	void whatLeavesTheBoatAsItIsIsMended() throws IOException {
		Run run = fixing(BOAT.replace("via 2 m", "via 2"), "--fix");
		assertEquals(0, run.status(), run.out() + run.err());
		assertEquals(BOAT, written());
		assertTrue(run.err().contains("boat.hull:10: "), run.err());
		assertTrue(run.err().contains("(language/unit-missing)"), run.err());
		assertTrue(run.out().startsWith("No findings."), run.out());
	}

	@Test
	void aDesignChangeIsMadeOnlyForTheRuleThatIsNamed() throws IOException {
		String open = BOAT.replace("      terminator right : endMale\n", "");
		assertEquals(1, fixing(open, "--fix").status());
		assertEquals(open, written());
		Run run = fixing(open, "--fix", "cabling/terminator-missing");
		assertEquals(0, run.status(), run.out() + run.err());
		assertEquals(BOAT.replace("terminator right", "terminator endTerminator"), written());
	}

	@Test
	void bothEndsAreMendedOneAfterTheOther() throws IOException {
		String open = BOAT.replace("      terminator right : endMale\n", "").replace("      terminator left : endFemale\n", "").replace("via 2 m", "via 2");
		Run run = fixing(open, "--fix", "cabling/terminator-missing");
		assertEquals(0, run.status(), run.out() + run.err());
		assertEquals(BOAT.replace("terminator right", "terminator endTerminator").replace("terminator left", "terminator startTerminator"), written());
	}

	@Test
	void aRuleThatDoesNotExistIsRefusedBeforeAnythingIsWritten() throws IOException {
		String open = BOAT.replace("via 2 m", "via 2");
		Run run = fixing(open, "--fix", "cabling/terminator-lost");
		assertEquals(2, run.status());
		assertTrue(run.err().contains("there is no rule 'cabling/terminator-lost' to mend by"), run.err());
		assertEquals(open, written());
	}

	@Test
	void aProtectedFileIsLeftAsItIs() throws IOException {
		Path file = folder.resolve("boat.hull");
		Files.writeString(file, BOAT.replace("via 2 m", "via 2"));
		Path link = folder.resolve("elsewhere.txt");
		Files.move(file, link);
		Files.createSymbolicLink(file, link);
		Run run = Run.of("check", "--fix", file.toString());
		assertEquals(0, run.status(), run.out() + run.err());
		assertTrue(Files.isSymbolicLink(file), "the link stays a link");
		assertEquals(BOAT, Files.readString(link));
	}

	/** Comments in any script, line ends of any kind, tabs and a byte order mark: every byte outside the change stays. */
	@RepeatedTest(60)
	void everyByteOutsideTheChangeStays(RepetitionInfo repetition) throws IOException {
		Random random = new Random(repetition.getCurrentRepetition());
		boolean unit = random.nextBoolean();
		String broken = unit ? BOAT.replace("via 2 m", "via 2") : BOAT.replace("      terminator right : endMale\n", "");
		byte[] before = disguised(broken, random).getBytes(StandardCharsets.UTF_8);
		Path file = Files.write(folder.resolve("boat.hull"), before);
		Run run = Run.of("check", "--fix", "cabling/terminator-missing", file.toString());
		assertEquals(0, run.status(), run.out() + run.err());

		byte[] after = Files.readAllBytes(file);
		int start = 0;
		while (start < before.length && before[start] == after[start]) {
			start++;
		}
		int inserted = after.length - before.length;
		byte[] taken = new byte[before.length];
		System.arraycopy(after, 0, taken, 0, start);
		System.arraycopy(after, start + inserted, taken, start, before.length - start);
		assertArrayEquals(before, taken, "only something was put in, in one place");
		String what = new String(after, start, inserted, StandardCharsets.UTF_8);
		assertTrue(unit ? what.strip().equals("m") : what.contains("terminator endTerminator : endMale"), what);
	}

	private static final String[] COMMENTS = { "// plain", "// größer als 5 \u00B5m", "/* \u4E2D\u6587 drop \uD83D\uDEA4 */", "//", "/* a\n   b */", "// { \" " };

	private static String disguised(String text, Random random) {
		StringBuilder disguised = new StringBuilder();
		for (String line : text.split("\n")) {
			String indent = random.nextInt(3) == 0 ? line.replace("  ", "\t") : line;
			disguised.append(indent).append(random.nextInt(3) == 0 ? " " + COMMENTS[random.nextInt(COMMENTS.length)] : "").append('\n');
			if (random.nextInt(4) == 0) {
				disguised.append(random.nextBoolean() ? "" : "\t  " + COMMENTS[random.nextInt(COMMENTS.length)]).append('\n');
			}
		}
		String ends = random.nextBoolean() ? disguised.toString() : disguised.toString().replace("\n", "\r\n");
		return (random.nextBoolean() ? "\uFEFF" : "") + ends;
	}
}
