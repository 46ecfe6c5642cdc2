/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.workbench.editor.HullCompletion;
import hullwright.workbench.editor.HullHover;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Map;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import org.junit.jupiter.api.Test;

/**
 * How the editor helps to read and write: colours, outline, completion, hover.
 */
class EditorTest {

	private static Bench bench(String name) throws Exception {
		return Bench.open(name, Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", SmallBoat.TEXT), "dinghy.hull");
	}

	@Test
	void eachKindOfTextHasItsColour() throws Exception {
		try (Bench bench = bench("colours")) {
			Window.until("the words of the language are coloured", () -> colourAt(bench, "network instruments"), name -> "keyword".equals(name));
			assertEquals("declared", Window.ui(() -> colourAt(bench, "Dinghy \"")));
			assertEquals("declared", Window.ui(() -> colourAt(bench, "display : instrumentDisplay")));
			assertEquals("string", Window.ui(() -> colourAt(bench, "\"House battery\"")));
			assertEquals("quantity", Window.ui(() -> colourAt(bench, "14.6 V")));
			assertEquals("quantity", Window.ui(() -> colourAt(bench, "mm2")));
			assertEquals("comment", Window.ui(() -> colourAt(bench, "for tests only. */")));
			assertEquals("comment", Window.ui(() -> colourAt(bench, "one device will do")));
			assertEquals("none", Window.ui(() -> colourAt(bench, "helm from battery")));
			Window.until("a name from a catalog is coloured", () -> colourAt(bench, "endFemale at helm"), name -> "part".equals(name));
			bench.type("endFemale at helm", "endFemale2 at helm");
			bench.type("endFemale2 at helm", "endMale at helm");
			assertEquals("part", Window.ui(() -> colourAt(bench, "endMale at helm")), "also while it is written, since it stands elsewhere");
		}
	}

	/** Which of our colours the text at this place has. */
	private static String colourAt(Bench bench, String place) {
		int at = bench.document().get().indexOf(place);
		assertTrue(at >= 0, "the text contains: " + place);
		StyleRange style = bench.text().getStyleRangeAtOffset(at);
		ColorRegistry colours = PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry();
		for (String name : List.of("keyword", "declared", "quantity", "string", "comment", "part")) {
			if (style != null && style.foreground != null && style.foreground.equals(colours.get("hullwright.workbench.colour." + name))) {
				return name;
			}
		}
		return "none";
	}

	@Test
	void theOutlineNamesWhatTheTextDeclares() throws Exception {
		try (Bench bench = bench("outline")) {
			Window.ui(() -> {
				Window.page().activate(bench.editor());
				return Window.page().showView(IPageLayout.ID_OUTLINE, null, IWorkbenchPage.VIEW_VISIBLE);
			});
			assertNotNull(Window.ui(() -> Adapters.adapt(bench.editor(), IContentOutlinePage.class)), "the editor has an outline");
			Window.until("the outline shows the series and, below, the network", () -> {
				List<String> names = new ArrayList<>();
				for (Tree tree : Window.below(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), Tree.class)) {
					collect(tree.getItems(), names);
				}
				return names;
			}, names -> names.stream().anyMatch(name -> name.startsWith("Dinghy  Dinghy for tests"))
					&& names.contains("instruments") && names.stream().anyMatch(name -> name.startsWith("block  block4")));
		}
	}

	private static void collect(TreeItem[] items, List<String> names) {
		for (TreeItem item : items) {
			names.add(item.getText());
			collect(item.getItems(), names);
		}
	}

	@Test
	void completionOffersWhatFitsTheFile() throws Exception {
		try (Bench bench = bench("completion")) {
			int afterColon = bench.document().get().indexOf("instrumentDisplay at helm");
			ICompletionProposal[] proposals = new HullCompletion().computeCompletionProposals(bench.viewer(), afterColon);
			List<String> names = Arrays.stream(proposals).map(ICompletionProposal::getDisplayString).toList();
			assertTrue(names.stream().anyMatch(name -> name.contains("depthTransducer")), "devices of the catalog: " + names);
			assertTrue(names.stream().noneMatch(name -> name.contains("endFemale")), "a terminator is no device: " + names);
		}
	}

	@Test
	void hoverShowsTheDeclarationOfAPart() throws Exception {
		try (Bench bench = bench("hover")) {
			int at = bench.document().get().indexOf("instrumentDisplay at helm") + 3;
			// The hover gives up soon rather than keep a person waiting, so the first one of a session may come to nothing.
			String shown = Window.until("the hover shows something",
					() -> new HullHover().getHoverInfo(bench.viewer(), new Region(at, 0)), Objects::nonNull);
			assertTrue(shown.startsWith("device instrumentDisplay"), "without the heading of the section above it: " + shown);
			assertTrue(shown.contains("load "), "its load is part of the declaration: " + shown);
		}
	}
}
