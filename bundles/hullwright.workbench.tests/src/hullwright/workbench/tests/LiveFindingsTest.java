/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.junit.jupiter.api.Test;

/**
 * Findings while the text is written, and after it is saved.
 */
class LiveFindingsTest {

	/** One finding, of the rule, that names the last part before the open end. How it is put is the rule's affair. */
	private static boolean isOpenEnd(List<String> found) {
		return found.size() == 1 && found.get(0).startsWith("cabling/terminator-missing: ") && found.get(0).contains("block");
	}

	private static Bench bench(String name, String boat) throws Exception {
		return Bench.open(name, Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", boat), "dinghy.hull");
	}

	@Test
	void aMissingTerminatorIsMarkedWhileTypingAndListedWhenSaved() throws Exception {
		try (Bench bench = bench("typing", SmallBoat.TEXT)) {
			bench.type(SmallBoat.TERMINATOR.strip() + "\n", "\n");
			Window.until("the open end is marked", bench::annotations, LiveFindingsTest::isOpenEnd);
			assertTrue(Window.ui(() -> bench.editor().isDirty()), "nobody saved yet");
			assertEquals(List.of(), Bench.markers(bench.file()), "the Findings view speaks of the saved text, which is good");

			bench.save();
			Window.until("the open end is listed", () -> Bench.markers(bench.file()), LiveFindingsTest::isOpenEnd);
			IMarker marker = bench.file().findMarkers("hullwright.workbench.finding", true, 0)[0];
			assertEquals(IMarker.SEVERITY_ERROR, marker.getAttribute(IMarker.SEVERITY, -1));
			int line = marker.getAttribute(IMarker.LINE_NUMBER, -1);
			assertEquals("tee block : block4 at helm", bench.document().get().lines().toList().get(line - 1).strip());
		}
	}

	@Test
	void whatIsMendedByHandDisappears() throws Exception {
		try (Bench bench = bench("mending", SmallBoat.TEXT.replace(SmallBoat.TERMINATOR, ""))) {
			Window.until("the open end is marked", bench::annotations, LiveFindingsTest::isOpenEnd);
			Window.until("and listed, since that is what the disk says", () -> Bench.markers(bench.file()), LiveFindingsTest::isOpenEnd);
			bench.type("tee block : block4 at helm\n", "tee block : block4 at helm\n" + SmallBoat.TERMINATOR);
			Window.until("nothing is marked", bench::annotations, List::isEmpty);
			bench.save();
			Window.until("nothing is listed", () -> Bench.markers(bench.file()), List::isEmpty);
		}
	}

	@Test
	void textThatCannotBeReadIsMarkedWhereItIs() throws Exception {
		try (Bench bench = bench("broken", SmallBoat.TEXT)) {
			bench.type("cable 1 m", "cable metre");
			List<String> found = Window.until("the broken line is marked", bench::annotations, marked -> !marked.isEmpty());
			assertTrue(found.get(0).startsWith("language/"), found.toString());
			assertFalse(found.get(0).contains("RULE_"), "no token of the parser shows: " + found);
		}
	}

	@Test
	void aFileThatNoEditorShowsIsCheckedToo() throws Exception {
		IProject project = Bench.create("unopened",
				Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", SmallBoat.TEXT.replace(SmallBoat.TERMINATOR, "")));
		try {
			Window.until("the open end is listed", () -> Bench.markers(project), LiveFindingsTest::isOpenEnd);
			project.getFile("dinghy.hull").setContents(SmallBoat.TEXT.getBytes(StandardCharsets.UTF_8), true, false, null);
			Window.until("the change on the disk is noticed", () -> Bench.markers(project), List::isEmpty);
		} finally {
			project.delete(true, true, null);
		}
	}

	@Test
	void whatWasNotCheckedIsForgottenOnceItIsMendedAndSaved() throws Exception {
		try (Bench bench = Bench.open("unreadable", Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", SmallBoat.TEXT), "dinghy.hull")) {
			bench.type("tee block : block4", "tee block :: block4");
			bench.save();
			Window.until("the project says that a file was read no further", () -> Bench.markers(bench.file().getProject()),
					found -> found.stream().anyMatch(text -> text.contains("Not checked: ")));

			bench.type("tee block :: block4", "tee block : block4");
			Window.until("the text is found sound while it is not saved", bench::annotations, List::isEmpty);
			bench.save();
			Window.until("nothing is left to say", () -> Bench.markers(bench.file().getProject()), List::isEmpty);
		}
	}

	@Test
	void closingWithoutSavingBringsBackWhatTheDiskSays() throws Exception {
		Bench bench = bench("regret", SmallBoat.TEXT);
		try {
			bench.type(SmallBoat.TERMINATOR.strip() + "\n", "\n");
			Window.until("the open end is marked", bench::annotations, LiveFindingsTest::isOpenEnd);
			Window.ui(() -> Window.page().closeEditor(bench.editor(), false));
			bench.file().setContents(SmallBoat.TEXT.replace(SmallBoat.TERMINATOR, "").getBytes(StandardCharsets.UTF_8), true, false, null);
			Window.until("what counts is the disk again", () -> Bench.markers(bench.file()), LiveFindingsTest::isOpenEnd);
		} finally {
			bench.close();
		}
	}
}
