/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.workbench.editor.HullCompletion;
import hullwright.workbench.writing.UnsavedCopies;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.ICompletionProposalExtension2;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Test;

/**
 * What helps to write: comments, layout, brackets, new lines, marks at uses, whole statements.
 */
class WritingTest {

	private static Bench bench(String name, String text) throws Exception {
		return Bench.open(name, Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", text), "dinghy.hull");
	}

	private static void run(String command) {
		Window.ui(() -> PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null));
	}

	/** The text, with a bar at the caret. To be called in the UI thread. */
	private static String withCaret(Bench bench) {
		StringBuilder text = new StringBuilder(bench.document().get());
		return text.insert(bench.viewer().getSelectedRange().x, '|').toString();
	}

	private static void key(Bench bench, String key) {
		Window.ui(() -> {
			if (key.equals("\n")) {
				bench.text().insert(key);
				return null;
			}
			for (char each : key.toCharArray()) {
				Event event = new Event();
				event.character = each;
				event.keyCode = each;
				bench.text().notifyListeners(SWT.KeyDown, event);
			}
			return null;
		});
	}

	@Test
	void aLineIsPutIntoACommentAndTakenOut() throws Exception {
		try (Bench bench = bench("comment", SmallBoat.TEXT)) {
			bench.caretAt("cable 1 m");
			run("hullwright.workbench.toggleComment");
			assertTrue(Window.ui(() -> withCaret(bench)).contains("\t\t\t// |cable 1 m\n"), Window.ui(() -> withCaret(bench)));
			run("hullwright.workbench.toggleComment");
			assertEquals(SmallBoat.TEXT, Window.ui(() -> bench.document().get()));
		}
	}

	@Test
	void theTextIsLaidOutAsOneStepAndTheCaretStaysAtItsWord() throws Exception {
		String untidy = SmallBoat.TEXT.replace("\t\t\tcable 1 m", "cable    1 m").replace("\tplaces {", "places\n{");
		try (Bench bench = bench("layout", untidy)) {
			bench.caretAt("tee block");
			run("hullwright.workbench.layOut");
			Window.until("the text is laid out", () -> bench.document().get(), text -> text.contains("\n\t\t\tcable 1 m\n") && text.contains("\tplaces {\n"));
			assertTrue(Window.ui(() -> withCaret(bench)).contains("|tee block"));
			run(IWorkbenchCommandConstants.EDIT_UNDO);
			assertEquals(untidy, Window.ui(() -> bench.document().get()));
			Window.ui(() -> {
				bench.editor().selectAndReveal(untidy.indexOf("cable    1"), 10);
				return null;
			});
			run("hullwright.workbench.layOut");
			Window.until("the selected line is laid out, and no other", () -> bench.document().get(),
					SmallBoat.TEXT.replace("\tplaces {", "places\n{")::equals);
		}
	}

	@Test
	void bracesAndQuotesComeInPairsAndANewLineIsIndented() throws Exception {
		try (Bench bench = bench("pairs", "series Skiff \n")) {
			bench.caretAt("\n");
			key(bench, "\"");
			key(bench, "A");
			assertEquals("series Skiff \"A|\"\n", Window.ui(() -> withCaret(bench)));
			key(bench, "\"");
			assertEquals("series Skiff \"A\"|\n", Window.ui(() -> withCaret(bench)), "the quote that stands there is taken");
			key(bench, " ");
			key(bench, "{");
			assertEquals("series Skiff \"A\" {|}\n", Window.ui(() -> withCaret(bench)));
			key(bench, "\n");
			assertEquals("series Skiff \"A\" {\n\t|\n}\n", Window.ui(() -> withCaret(bench)));
			key(bench, "places {");
			key(bench, "\n");
			assertTrue(Window.ui(() -> withCaret(bench)).contains("\tplaces {\n\t\t|"), Window.ui(() -> withCaret(bench)));
			key(bench, "}");
			assertTrue(Window.ui(() -> withCaret(bench)).contains("\tplaces {\n\t}|"), Window.ui(() -> withCaret(bench)));
		}
	}

	@Test
	void usesOfTheThingAtTheCaretAreMarked() throws Exception {
		try (Bench bench = bench("marks", SmallBoat.TEXT.replace("// one device", "// block"))) {
			bench.caretAt("block.1");
			Window.until("declaration and use are marked, and the comment is not", () -> marked(bench), marks -> marks.equals(List.of("block", "block")));
			bench.caretAt("cable 1 m");
			Window.until("a word of the language is no name", () -> marked(bench), List::isEmpty);
		}
	}

	private static List<String> marked(Bench bench) throws Exception {
		List<String> marks = new ArrayList<>();
		for (Iterator<Annotation> all = bench.viewer().getAnnotationModel().getAnnotationIterator(); all.hasNext();) {
			Annotation each = all.next();
			if (each.getType().equals("org.eclipse.ui.genericeditor.text")) {
				var place = bench.viewer().getAnnotationModel().getPosition(each);
				marks.add(bench.document().get(place.getOffset(), place.getLength()));
			}
		}
		return marks;
	}

	@Test
	void aWholeStatementIsInsertedWithPlacesToFillIn() throws Exception {
		try (Bench bench = bench("statement", SmallBoat.TEXT.replace("hull 1", "hu"))) {
			int at = bench.document().get().indexOf("\thu\n") + 3;
			ICompletionProposal whole = Arrays.stream(new HullCompletion().computeCompletionProposals(bench.viewer(), at))
					.filter(each -> each.getDisplayString().contains("A boat that is sold")).findFirst().orElseThrow();
			Window.ui(() -> {
				bench.editor().selectAndReveal(at, 0);
				((ICompletionProposalExtension2) whole).apply(bench.viewer(), (char) 0, 0, at);
				return null;
			});
			assertTrue(Window.ui(() -> bench.document().get()).contains("\thull 1 with option\n"), Window.ui(() -> bench.document().get()));
		}
	}

	@Test
	void whatIsTooLargeIsForReadingOnly() throws Exception {
		String large = "// " + "x".repeat(97) + "\n";
		try (Bench bench = bench("large", large.repeat(51_000))) {
			Window.ui(() -> {
				bench.text().setSelection(0);
				return null;
			});
			key(bench, "typed");
			assertFalse(Window.ui(() -> bench.document().get(0, 10)).contains("typed"), "nothing is typed into it");
			assertFalse(Window.ui(() -> bench.editor().isDirty()));
			assertEquals(0, Window.ui(() -> bench.annotations().size()));
			Window.until("the window still answers", () -> Display.getCurrent() != null, answer -> answer);
		}
	}

	@Test
	void whatIsNotSavedIsKeptBesideUntilItIs() throws Exception {
		try (Bench bench = bench("unsaved", SmallBoat.TEXT)) {
			bench.type("one device will do", "written and not saved");
			String path = bench.file().getFullPath().toString();
			Window.until("a copy is kept", () -> UnsavedCopies.ofWorkspace().leftBehind().getOrDefault(path, ""),
					text -> text.contains("written and not saved"));
			assertTrue(bench.file().readString().contains("one device will do"), "the file itself is as it was saved");
			bench.save();
			Window.until("the copy goes when it is saved", () -> UnsavedCopies.ofWorkspace().leftBehind().containsKey(path), there -> !there);
		}
	}
}
