/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.network.part.Connector;
import hullwright.rules.edit.TextChange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Parts of a catalog put into a text at the place of a person's cursor.
 */
class PartInsertionTest {

	private static final String KIT = """
			import "standard:parts"

			catalog Kit {
				tee ours { backbone micro male, micro female; ports 1..3 : micro female }
				device logger { port bus : micro male; load 1 LEN }
			}
			""";

	private static final String BOAT = """
			import "standard:parts"

			series Skerry "Invented" {
				supply house { 12 V; fuse 3 A }
				network instruments {
					backbone of light {
						terminator left : endFemale
						tee bow : block2
						tee stern : block2
						terminator right : endMale
					}
					drop bow.1 to depth : depthTransducer
				}
			}
			""";

	private static final Checker CHECKER = Checker.create();

	private static OfferedPart part(Snapshot snapshot, String name) {
		return CHECKER.texts().parts(snapshot).stream().filter(each -> each.part().identity().name().equals(name)).findFirst().orElseThrow();
	}

	/** The boat with a part put where a piece of its text begins. */
	private static String with(String part, String cursor) throws PartRefused {
		return with(BOAT, part, cursor);
	}

	private static String with(String boat, String part, String cursor) throws PartRefused {
		Snapshot snapshot = Snapshot.of(Map.of("boats/skerry.hull", boat, "kit.hull", KIT));
		List<TextChange> changes = new ArrayList<>(
				CHECKER.texts().insert(snapshot, "boats/skerry.hull", boat.indexOf(cursor), part(snapshot, part)));
		changes.sort(Comparator.comparing(TextChange::offset).reversed());
		StringBuilder text = new StringBuilder(boat);
		changes.forEach(each -> text.replace(each.offset(), each.offset() + each.length(), each.replacement()));
		return text.toString();
	}

	private static void expectAfter(String line, String inserted, String part, String cursor) throws PartRefused {
		assertEquals(BOAT.replace(line, line + inserted), with(part, cursor));
	}

	@Test
	void whatABackboneIsMadeOfGoesBesideTheItemAtTheCursor() throws PartRefused {
		expectAfter("\t\t\ttee bow : block2\n", "\t\t\ttee spare : tee1\n", "tee1", "bow : block2");
		expectAfter("\t\t\ttee bow : block2\n", "\t\t\tcable 1 m of mid\n", "mid", "bow : block2");
		expectAfter("\t\t\ttee bow : block2\n", "\t\t\ttap feed : midTap from house\n", "midTap", "bow : block2");
		expectAfter("\t\t\tterminator left : endFemale\n", "\t\t\tisolator split : splitTee\n", "splitTee", "left");
		expectAfter("\t\t\ttee stern : block2\n", "\t\t\twall passage : wallPair\n", "wallPair", "terminator right");
	}

	@Test
	void elsewhereItGoesBeforeTheLastTerminator() throws PartRefused {
		expectAfter("\t\t\ttee stern : block2\n", "\t\t\ttee spare : tee1\n", "tee1", "drop bow.1");
		expectAfter("\t\t\ttee stern : block2\n", "\t\t\ttee spare : tee1\n", "tee1", "series Skerry");
	}

	@Test
	void aDeviceHangsOnAFreePortOfTheTeeAtTheCursorOrElseOnTheFirst() throws PartRefused {
		String drop = "\t\tdrop bow.1 to depth : depthTransducer\n";
		expectAfter(drop, "\t\tdrop bow.2 via 1 m to instrumentDisplay : instrumentDisplay\n", "instrumentDisplay", "drop bow.1");
		expectAfter(drop, "\t\tdrop stern.1 via 1 m to instrumentDisplay : instrumentDisplay\n", "instrumentDisplay", "stern : block2");
		expectAfter(drop, "\t\tdrop bow.2 to depthTransducer : depthTransducer\n", "depthTransducer", "drop bow.1");
		expectAfter(drop, "\t\tcap bow.2 with microPortCap\n", "microPortCap", "drop bow.1");
		expectAfter(drop, "\t\tfeed bow.2 via powerCord from house\n", "powerCord", "drop bow.1");
	}

	@Test
	void aMissingImportIsAddedByTheNameThatTheFileSeesItUnder() throws PartRefused {
		assertEquals(BOAT.replace("parts\"\n", "parts\"\nimport \"../kit.hull\"\n")
				.replace("\t\t\ttee bow : block2\n", "\t\t\ttee bow : block2\n\t\t\ttee spare : ours\n"), with("ours", "bow : block2"));
		assertEquals(BOAT.replace("parts\"\n", "parts\"\nimport \"../kit.hull\"\n")
				.replace("depthTransducer\n", "depthTransducer\n\t\tdrop bow.2 via 1 m to logger : logger\n"), with("logger", "drop bow.1"));
		String bare = "series Bare {\n\tnetwork n {\n\t\tbackbone { }\n\t}\n}\n";
		assertEquals("import \"standard:parts\"\n\nseries Bare {\n\tnetwork n {\n\t\tbackbone { \n\t\t\ttee spare : tee1\n\t\t}\n\t}\n}\n", with(bare, "tee1", "backbone"));
	}

	@Test
	void whatHasNoPlaceIsRefusedInASentence() {
		assertEquals("A fuse is named where it protects something: write 'fuse 3 A of bladeFuse' in a supply.",
				assertThrows(PartRefused.class, () -> with("bladeFuse", "bow : block2")).getMessage());
		assertEquals("No port of the network instruments is free for pushInstrumentDisplay (push male). Insert a tee or a block first.",
				assertThrows(PartRefused.class, () -> with("pushInstrumentDisplay", "bow : block2")).getMessage());
		assertTrue(assertThrows(PartRefused.class, () -> with("serialPaddleLog", "bow : block2")).getMessage().contains("no connector for a network"));
		assertEquals("There is no network in this text that the part could go into.",
				assertThrows(PartRefused.class, () -> with("series None { }\n", "tee1", "series")).getMessage());
		assertTrue(assertThrows(PartRefused.class, () -> with("series None {\n", "tee1", "series")).getMessage().contains("Mend its slips first"));
	}

	@Test
	void theConnectorsOfThePartAtTheCursorAreKnown() {
		Snapshot snapshot = Snapshot.of(Map.of("skerry.hull", BOAT));
		assertEquals("[micro female, micro male]", names(CHECKER.texts().connectorsAt(snapshot, "skerry.hull", BOAT.indexOf("bow : "))));
		assertEquals("[micro female]", names(CHECKER.texts().connectorsAt(snapshot, "skerry.hull", BOAT.indexOf("endFemale"))));
		assertEquals("[]", names(CHECKER.texts().connectorsAt(snapshot, "skerry.hull", BOAT.indexOf("supply"))));
	}

	private static String names(Set<Connector> connectors) {
		return connectors.stream().map(Connector::toString).distinct().sorted().collect(Collectors.toList()).toString();
	}

	@Test
	void theBuiltInPartsAreOfferedWithoutAnImport() {
		List<OfferedPart> parts = CHECKER.texts().parts(Snapshot.of(Map.of("kit.hull", KIT)));
		assertEquals(List.of("ours", "logger"), parts.stream().filter(each -> !each.builtIn()).map(each -> each.part().identity().name()).toList());
		assertTrue(parts.stream().anyMatch(each -> each.file().equals("standard:parts") && each.part().identity().name().equals("light")));
		assertTrue(parts.stream().anyMatch(each -> each.file().equals("standard:serial") && each.part().identity().name().equals("serialPaddleLog")));
		assertTrue(ProjectTexts.builtIn("standard:parts").orElseThrow().contains("catalog Standard"));
	}
}
