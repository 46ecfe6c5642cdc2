/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.texteditor.ITextEditorActionDefinitionIds;
import org.junit.jupiter.api.Test;

/**
 * Mending a finding, from the text by the command behind Ctrl+1, and from the Findings view.
 */
class QuickFixTest {

	private static final String WITHOUT = SmallBoat.TEXT.replace(SmallBoat.TERMINATOR, "");
	private static final String TITLE = "Add terminator endMale at the end of the backbone";

	@Test
	void theCommandAddsTheMissingTerminatorAsOneStep() throws Exception {
		try (Bench bench = Bench.open("fix-in-text", Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", WITHOUT), "dinghy.hull")) {
			Window.until("the open end is marked", bench::annotations, found -> found.size() == 1);
			bench.caretAt("tee block");

			// once: who asks before the fixes are tried is shown them when they are
			run(ITextEditorActionDefinitionIds.QUICK_ASSIST);
			Table choices = Window.until("the fix is offered", () -> proposals().orElse(null), table -> table != null && Window.<Boolean>ui(() -> titles(table).contains(TITLE)));
			Window.ui(() -> {
				choices.setSelection(titles(choices).indexOf(TITLE));
				choices.notifyListeners(SWT.Selection, new Event());
				return null;
			});
			Window.until("the line that it adds is shown beside it", QuickFixTest::besideProposals,
					shown -> shown.stream().anyMatch(text -> text.contains("dinghy.hull\n+ terminator ")));
			Window.ui(() -> {
				choices.notifyListeners(SWT.DefaultSelection, new Event());
				return null;
			});

			Window.until("nothing is marked any more", bench::annotations, List::isEmpty);
			List<String> lines = bench.document().get().lines().map(String::strip).toList();
			int tee = lines.indexOf("tee block : block4 at helm");
			assertTrue(lines.get(tee + 1).startsWith("terminator "), "the line after the last tee: " + lines.get(tee + 1));
			assertTrue(lines.get(tee + 1).contains(": endMale"), "the line after the last tee: " + lines.get(tee + 1));

			run(IWorkbenchCommandConstants.EDIT_UNDO);
			assertEquals(WITHOUT, Window.ui(() -> bench.document().get()), "one step takes the fix back");
			Window.until("the open end is marked again", bench::annotations, found -> found.size() == 1);
		}
	}

	@Test
	void theFindingsViewAsksWhatToDoAndMendsAFileThatNoEditorShows() throws Exception {
		IProject project = Bench.create("fix-in-list", Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", WITHOUT));
		try {
			Window.until("the open end is listed", () -> Bench.markers(project), found -> found.size() == 1);
			Window.ui(() -> Window.page().showView("hullwright.workbench.findings"));
			Tree list = Window.until("the view shows it", () -> Window.below(mainShell(), Tree.class).stream()
					.filter(tree -> tree.getItemCount() == 1 && tree.getItem(0).getText().contains("no terminator")).findFirst().orElse(null), tree -> tree != null);
			Window.ui(() -> {
				list.setSelection(list.getItem(0));
				list.notifyListeners(SWT.Selection, new Event());
				return null;
			});
			PlatformUI.getWorkbench().getDisplay().asyncExec(() -> run(ITextEditorActionDefinitionIds.QUICK_ASSIST));
			Shell question = Window.until("it is asked what to do", () -> Arrays.stream(Display.getCurrent().getShells())
					.filter(shell -> shell.isVisible() && shell.getText().equals("Mend finding")).findFirst().orElse(null), found -> found != null);
			Window.ui(() -> {
				assertTrue(titles(Window.below(question, Table.class).get(0)).contains(TITLE));
				question.getDefaultButton().notifyListeners(SWT.Selection, new Event());
				return null;
			});
			Window.until("nothing is listed any more", () -> Bench.markers(project), List::isEmpty);
			assertTrue(project.getFile("dinghy.hull").readString().contains(": endMale"));
		} finally {
			project.delete(true, true, null);
		}
	}

	private static Shell mainShell() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
	}

	private static void run(String command) {
		Window.ui(() -> PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null));
	}

	/** The list of choices, if one is on the screen. To be called in the UI thread. */
	private static Optional<Table> proposals() {
		Shell main = mainShell();
		return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell != main && shell.isVisible())
				.flatMap(shell -> Window.below(shell, Table.class).stream()).findFirst();
	}

	/** What windows beside the main one show as text. To be called in the UI thread. */
	private static List<String> besideProposals() {
		Shell main = mainShell();
		return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell != main && shell.isVisible())
				.flatMap(shell -> Window.below(shell, StyledText.class).stream()).map(text -> text.getText().replace("\r\n", "\n")).toList();
	}

	private static List<String> titles(Table table) {
		return Arrays.stream(table.getItems()).map(item -> item.getText()).toList();
	}
}
