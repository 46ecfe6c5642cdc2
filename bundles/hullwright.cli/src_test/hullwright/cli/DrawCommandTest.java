/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code hullwright draw} as a person at a terminal meets it.
 */
class DrawCommandTest {

	private static final String EXAMPLES = "../hullwright.examples/examples/";

	@TempDir
	private Path folder;

	@Test
	void aBoatIsDrawnWithItsVoltagesAndWhatIsLeft() {
		Run run = Run.of("draw", EXAMPLES + "first-power-up");
		assertEquals(0, run.status(), run.err());
		assertEquals("", run.err());
		assertTrue(run.out().startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg "), run.out());
		assertTrue(run.out().contains("<title>Starter, revision A, no options</title>"), run.out());
		// the figure that compute tells of the same device
		assertTrue(run.out().contains(">10.79 V, 1.79 V left<"), run.out());
		assertTrue(run.out().contains("licensed electrician"), "the cautions are on the sheet");
	}

	@Test
	void aHullHasWhatWasSoldWithIt() {
		Run run = Run.of("draw", "--hull", "4", EXAMPLES + "harbour-pilot");
		assertEquals(0, run.status(), run.err());
		assertTrue(run.out().contains("data-element=\"Fabelholm38.instruments.boarding\""), "a light of this hull alone");
		assertFalse(Run.of("draw", "--hull", "1", EXAMPLES + "harbour-pilot").out().contains("instruments.boarding\""));
	}

	@Test
	void whatIsWrongIsMarkedWhereItIs() {
		Run run = Run.of("draw", EXAMPLES + "faulty");
		assertEquals(0, run.status(), "drawn, whatever was found");
		int device = run.out().lastIndexOf("data-element=\"Fabelholm22.instruments.air\"");
		String told = run.out().substring(device, run.out().indexOf("</title>", device));
		assertTrue(told.contains("error: "), told);
	}

	@Test
	void aFileIsWrittenWholeOrNotAtAll() throws IOException {
		Path file = folder.resolve("boat.svg");
		Run run = Run.of("draw", EXAMPLES + "first-power-up", "--output", file.toString());
		assertEquals(0, run.status(), run.err());
		assertEquals(Run.of("draw", EXAMPLES + "first-power-up").out(), Files.readString(file));
		Run hopeless = Run.of("draw", EXAMPLES + "first-power-up", "--output", folder.resolve("none/boat.svg").toString());
		assertEquals(2, hopeless.status());
		assertTrue(hopeless.err().contains("there is no folder"), hopeless.err());
	}

	@Test
	void aFileNamedSoIsWrittenAsPdf() throws IOException {
		Path file = folder.resolve("boat.PDF");
		assertEquals(0, Run.of("draw", EXAMPLES + "first-power-up", "--output", file.toString()).status());
		assertEquals("%PDF-1.", new String(Files.readAllBytes(file), 0, 7, StandardCharsets.US_ASCII));
		byte[] before = Files.readAllBytes(file);
		assertEquals(2, Run.of("draw", folder.resolve("none").toString(), "--output", file.toString()).status());
		assertArrayEquals(before, Files.readAllBytes(file), "what was there stays when nothing can be drawn");
	}

	@Test
	void badInputIsNamedWithItsPlace() throws IOException {
		Files.writeString(folder.resolve("boat.hull"), "series Skerry \"Invented\" {\n\tnetwork\n}\n");
		Run run = Run.of("draw", folder.toString());
		assertEquals(2, run.status());
		assertTrue(run.err().contains("boat.hull:3:1 "), run.err());
		assertTrue(run.err().contains("hullwright: there is no boat to draw\n"), run.err());
		assertEquals("", run.out());
	}

	@Test
	void ofSeveralSeriesOneMustBeNamed() throws IOException {
		Files.writeString(folder.resolve("one.hull"), "series Skerry \"Invented\" {\n}\n");
		Files.writeString(folder.resolve("other.hull"), "series Holm \"Invented\" {\n}\n");
		Run run = Run.of("draw", folder.toString());
		assertEquals(2, run.status());
		assertEquals("hullwright: there are 2 series (Skerry, Holm); name the file of one\n", run.err());
		assertEquals(0, Run.of("draw", folder.resolve("one.hull").toString()).status());
	}

	@Test
	void anUnknownHullIsRefused() {
		Run run = Run.of("draw", "--hull", "99", EXAMPLES + "harbour-pilot");
		assertEquals(2, run.status());
		assertTrue(run.err().contains("series Fabelholm38 has no hull '99'"), run.err());
	}
}
