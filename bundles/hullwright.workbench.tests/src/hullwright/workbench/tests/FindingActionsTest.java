/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.Test;

/**
 * What can be done about a finding beside mending it: read why it matters, set it aside, and look at the plugin that it is about.
 */
class FindingActionsTest {

	private static final String LONG = SmallBoat.TEXT.replace("via 1 m of light to display", "via 8 m of light to display");
	private static final String PROFILE = "profile Bench from standard {\n\tcabling/drop-too-long { advice above 4 m; error above 7 m }\n}\n";

	private static void run(String command) {
		Window.ui(() -> PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null));
	}

	private static Shell mainShell() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
	}

	/** The page that the view of rules shows. */
	private static String page() throws Exception {
		Window.page().showView("hullwright.workbench.rules");
		Composite view = Display.getCurrent().getFocusControl().getParent().getParent();
		return Window.below(view, StyledText.class).get(0).getText();
	}

	@Test
	void theRuleBehindTheFindingAtTheCursorIsExplainedWithWhatIsInForce() throws Exception {
		try (Bench bench = Bench.open("explain", Map.of("yard.hull", PROFILE, "dinghy.hull", LONG), "dinghy.hull")) {
			Window.until("the drop is marked", bench::annotations, found -> found.stream().anyMatch(each -> each.startsWith("cabling/drop-too-long")));
			bench.caretAt("drop block.1");
			run("hullwright.workbench.explain");
			String page = Window.until("its page is shown", FindingActionsTest::page, text -> text.startsWith("Drop too long"));
			assertTrue(page.contains("In force in explain"), page);
			assertTrue(page.contains("error above 7 m: profile Bench, yard.hull line 2"), page);
			assertTrue(page.contains("Why it matters"), page);
			assertFalse(page.contains("```"), "the code stands without its fence");
		}
	}

	@Test
	void aWaiverNeedsAReasonAndIsOneStepToUndo() throws Exception {
		try (Bench bench = Bench.open("waive", Map.of("yard.hull", PROFILE, "dinghy.hull", LONG), "dinghy.hull")) {
			select(bench.file().getProject(), "the drop to display is 8 m long");
			PlatformUI.getWorkbench().getDisplay().asyncExec(() -> run("hullwright.workbench.waive"));
			Shell dialog = Window.until("the reason is asked", () -> Arrays.stream(Display.getCurrent().getShells())
					.filter(shell -> shell.isVisible() && shell.getText().equals("Waive finding")).findFirst().orElse(null), found -> found != null);
			assertFalse(Window.ui(() -> dialog.getDefaultButton().isEnabled()), "no waiver without a reason");
			Window.ui(() -> {
				Window.below(dialog, Text.class).stream().filter(field -> field.getMessage().startsWith("What makes")).findFirst().orElseThrow()
						.setText("the console moves");
				dialog.getDefaultButton().notifyListeners(SWT.Selection, new Event());
				return null;
			});
			String waiver = "\twaive cabling/drop-too-long on instruments.display because \"the console moves\" until " + LocalDate.now().plusMonths(6) + "\n\n";
			Window.until("the waiver is written", () -> bench.document().get(), LONG.replace("\thull 1\n", waiver + "\thull 1\n")::equals);
			Window.until("nothing about the drop is marked", bench::annotations, found -> found.stream().noneMatch(each -> each.contains("drop to display")));
			run(IWorkbenchCommandConstants.EDIT_UNDO);
			assertEquals(LONG, Window.ui(() -> bench.document().get()), "one step takes it back");
		}
	}

	/** Selects a finding in the list. */
	private static void select(IProject project, String finding) throws Exception {
		Window.until("it is listed", () -> Bench.markers(project), found -> found.stream().anyMatch(each -> each.contains(finding)));
		Window.ui(() -> Window.page().showView("hullwright.workbench.findings"));
		Window.until("the view shows it", () -> {
			for (Tree tree : Window.below(mainShell(), Tree.class)) {
				for (var item : tree.getItems()) {
					if (item.getText().contains(finding)) {
						tree.setSelection(item);
						tree.notifyListeners(SWT.Selection, new Event());
						return true;
					}
				}
			}
			return false;
		}, seen -> seen);
	}

	@Test
	void aFindingSaysItsElementAndTheBoatsThatHaveIt() throws Exception {
		String optional = LONG.replace("\tplaces {", "\toptions {\n\t\tscreen\n\t}\n\n\tplaces {").replace("display : instrumentDisplay at helm", "display : instrumentDisplay at helm when screen");
		IProject project = Bench.create("columns", Map.of("yard.hull", PROFILE, "dinghy.hull", optional));
		try {
			IMarker marker = Window.until("it is listed", () -> Arrays.stream(project.findMarkers("hullwright.workbench.finding", true, 2))
					.filter(each -> each.getAttribute("rule", "").equals("cabling/drop-too-long")).findFirst().orElse(null), found -> found != null);
			assertEquals(List.of("Dinghy.instruments.display", "when screen", "some", "cabling"), List.of(marker.getAttribute("element", ""),
					marker.getAttribute("boats", ""), marker.getAttribute("occurs", ""), marker.getAttribute("family", "")));
		} finally {
			project.delete(true, true, null);
		}
	}

	@Test
	void aPluginIsShownAsWhatItIsAndNotAsText() throws Exception {
		IProject project = Bench.create("plugin-page", Map.of("yard.hull", Bench.PROFILE));
		try {
			project.getFolder("rules").create(true, true, null);
			IFile jar = project.getFile("rules/page.jar");
			jar.create(TrustPluginTest.jar(), true, false, null);
			IMarker off = Window.until("the plugin is listed", () -> Arrays.stream(jar.findMarkers("hullwright.workbench.finding", true, 0)).findFirst().orElse(null),
					found -> found != null);
			IEditorPart page = Window.ui(() -> IDE.openEditor(Window.page(), off, true));
			assertEquals("hullwright.workbench.pluginPage", Window.ui(() -> page.getSite().getId()));
			List<String> shown = Window.ui(() -> Window.below((Composite) Display.getCurrent().getFocusControl().getParent(), Control.class).stream()
					.map(each -> each instanceof Label label ? label.getText() : each instanceof Button button ? button.getText() : "").toList());
			assertTrue(shown.contains("Rules of the house: yard.window 1.0.0"), shown.toString());
			assertTrue(shown.contains("Trust this plugin\u2026"), shown.toString());
			Window.ui(() -> Window.page().closeEditor(page, false));
		} finally {
			project.delete(true, true, null);
		}
	}
}
