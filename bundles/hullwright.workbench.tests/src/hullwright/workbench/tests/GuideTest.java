/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.Section;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Test;

/**
 * The guided steps for whoever is new.
 */
class GuideTest {

	private static List<Section> steps() throws Exception {
		Window.page().showView("hullwright.workbench.guide");
		Composite shown = Display.getCurrent().getFocusControl().getParent();
		while (Window.below(shown, Section.class).size() < 8) {
			shown = shown.getParent();
		}
		return Window.below(shown, Section.class);
	}

	private static void press(String step, String button) {
		Window.ui(() -> {
			Section section = steps().stream().filter(each -> each.getText().endsWith(step)).findFirst().orElseThrow();
			Window.below(section, Button.class).stream().filter(each -> each.getText().equals(button)).findFirst().orElseThrow()
					.notifyListeners(SWT.Selection, new Event());
			return null;
		});
	}

	@Test
	void theStepsAreOfferedInHelpAndTaken() throws Exception {
		try (Bench bench = Bench.open("guide", Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", SmallBoat.TEXT), "dinghy.hull")) {
			Window.ui(() -> PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("hullwright.workbench.firstNetwork", null));
			assertTrue(Window.ui(() -> steps().get(0).isExpanded()));
			press("Make a project", "Next");
			assertEquals("\u2713 Make a project", Window.ui(() -> steps().get(0).getText()));
			assertTrue(Window.ui(() -> !steps().get(0).isExpanded() && steps().get(1).isExpanded()));

			press("Forget a terminator", "Do it");
			assertEquals(SmallBoat.TEXT.replace(SmallBoat.TERMINATOR, ""), Window.ui(() -> bench.document().get()));
			Window.until("the open end is marked", bench::annotations, found -> found.size() == 1 && found.get(0).startsWith("cabling/terminator-missing"));
			press("Read why it matters", "Do it");
			Window.until("the page of the rule is shown", () -> Window.page().getActivePart().getTitle(), title -> title.startsWith("Rules"));
			Window.ui(() -> {
				Window.page().activate(bench.editor());
				return PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(IWorkbenchCommandConstants.EDIT_UNDO, null);
			});
			assertEquals(SmallBoat.TEXT, Window.ui(() -> bench.document().get()));
			Window.ui(() -> {
				IViewPart guide = Window.page().findView("hullwright.workbench.guide");
				Window.page().hideView(guide);
				return null;
			});
		}
	}
}
