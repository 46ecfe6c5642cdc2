/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.search.ui.NewSearchUI;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.Test;

/**
 * From a name to its declaration and its uses, and another name everywhere, by the commands behind the keys.
 */
class NamesInEditorTest {

	private static final String KIT = """
			import "standard:parts"

			catalog Kit {
				tee dashBlock { backbone screw male, screw female; ports 1..4 : screw female }
			}
			""";

	private static final String BOAT = SmallBoat.TEXT.replace("import \"standard:parts\"\n", "import \"standard:parts\"\nimport \"kit.hull\"\n")
			.replace("block : block4", "block : dashBlock");

	private static Bench bench(String name) throws Exception {
		return Bench.open(name, Map.of("yard.hull", Bench.PROFILE, "kit.hull", KIT, "dinghy.hull", BOAT), "dinghy.hull");
	}

	private static void run(String command) {
		PlatformUI.getWorkbench().getDisplay().asyncExec(() -> {
			try {
				PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
			} catch (Exception e) {
				throw new IllegalStateException(command, e);
			}
		});
	}

	private static String selected() {
		IEditorPart active = Window.page().getActiveEditor();
		return active instanceof ITextEditor editor
				? editor.getTitle() + ": " + ((ITextSelection) editor.getSelectionProvider().getSelection()).getText() : String.valueOf(active);
	}

	@Test
	void theKeyGoesToTheDeclarationInAnotherFileAndInABuiltInCatalog() throws Exception {
		try (Bench bench = bench("declaration")) {
			bench.caretAt("Block at helm");
			run("org.eclipse.ui.edit.text.open.hyperlink");
			Window.until("the house's catalog is open at the part", NamesInEditorTest::selected, "kit.hull: dashBlock"::equals);
			Window.ui(() -> Window.page().closeEditor(Window.page().getActiveEditor(), false));
			bench.caretAt("Display at helm");
			run("org.eclipse.ui.edit.text.open.hyperlink");
			Window.until("the built-in catalog is open at the device", NamesInEditorTest::selected, "parts.hull: instrumentDisplay"::equals);
			Window.ui(() -> {
				assertFalse(((ITextEditor) Window.page().getActiveEditor()).isEditable(), "a built-in catalog is for reading");
				return Window.page().closeEditor(Window.page().getActiveEditor(), false);
			});
		}
	}

	@Test
	void usesAreListedWithTheirLines() throws Exception {
		try (Bench bench = bench("uses")) {
			bench.caretAt("block.1");
			run("org.eclipse.ui.genericeditor.findReferences");
			Window.until("the Search view lists declaration and use", NamesInEditorTest::searchTree,
					lines -> lines.stream().anyMatch(line -> line.endsWith("tee block : dashBlock at helm"))
							&& lines.stream().anyMatch(line -> line.endsWith("drop block.1 via 1 m of light to display : instrumentDisplay at helm")));
			assertEquals("'block' is named in 2 places", Window.ui(() -> NewSearchUI.getSearchResultView().getActivePage().getLabel()));
		}
	}

	private static List<String> searchTree() {
		List<String> lines = new ArrayList<>();
		for (Tree tree : Window.below(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), Tree.class)) {
			collect(tree.getItems(), lines);
		}
		return lines;
	}

	private static void collect(TreeItem[] items, List<String> lines) {
		for (TreeItem item : items) {
			lines.add(item.getText());
			collect(item.getItems(), lines);
		}
	}

	@Test
	void aNameIsChangedInAllFilesAfterAPreviewAndAsOneStepToUndo() throws Exception {
		try (Bench bench = bench("rename")) {
			bench.type("// one device will do", "// not saved yet");
			bench.caretAt("Block at helm");
			run("hullwright.workbench.rename");
			Shell question = shell("Rename 'dashBlock'");
			enter(question, "to");
			Window.until("a word of the language is refused", () -> texts(question),
					texts -> texts.stream().anyMatch(text -> text.contains("'to' is a word of the language")));
			enter(question, "helmBlock");
			press(question, "Preview");
			Window.until("both files are previewed", () -> Window.below(shell("Rename 'dashBlock'"), Tree.class).stream()
					.flatMap(tree -> Arrays.stream(tree.getItems())).flatMap(item -> item.getItemCount() > 0 ? Arrays.stream(item.getItems()) : Arrays.stream(new TreeItem[] { item }))
					.map(TreeItem::getText).toList().toString(), seen -> seen.contains("kit.hull") && seen.contains("dinghy.hull"));
			press(question, "OK");
			Window.until("the part is used by its new name", () -> bench.document().get(), text -> text.contains("tee block : helmBlock at helm"));
			assertTrue(bench.document().get().contains("// not saved yet"), "what was not saved is still there");
			assertTrue(Window.ui(() -> bench.editor().isDirty()), "and still not saved");
			Window.until("it is declared by its new name", () -> bench.file().getProject().getFile("kit.hull").readString(),
					text -> text.contains("tee helmBlock {"));

			Window.ui(() -> {
				Window.page().activate(bench.editor());
				return null;
			});
			run(IWorkbenchCommandConstants.EDIT_UNDO);
			// other files change with it, so the platform asks
			press(shell("Undo"), "OK");
			Window.until("the old name is back", () -> bench.document().get(), text -> text.contains("tee block : dashBlock at helm"));
			Window.until("in the other file, too", () -> bench.file().getProject().getFile("kit.hull").readString(),
					text -> text.contains("tee dashBlock {"));
		}
	}

	private static Shell shell(String title) {
		return Window.until("there is a window: " + title, () -> Arrays.stream(Display.getCurrent().getShells())
				.filter(shell -> shell.isVisible() && shell.getText().equals(title)).findFirst().orElse(null), found -> found != null);
	}

	private static void enter(Shell shell, String text) {
		Window.ui(() -> {
			Window.below(shell, Text.class).stream().filter(Text::isVisible).filter(Text::isEnabled).findFirst().orElseThrow().setText(text);
			return null;
		});
	}

	private static void press(Shell shell, String label) {
		Button button = Window.until(label + " can be pressed", () -> Window.below(shell, Button.class).stream()
				.filter(each -> each.getText().replace("&", "").contains(label) && each.isEnabled() && each.isVisible()).findFirst().orElse(null), found -> found != null);
		PlatformUI.getWorkbench().getDisplay().asyncExec(() -> button.notifyListeners(SWT.Selection, new Event()));
	}

	private static List<String> texts(Shell shell) {
		List<String> texts = new ArrayList<>();
		Window.below(shell, Label.class).forEach(label -> texts.add(label.getText()));
		Window.below(shell, CLabel.class).forEach(label -> texts.add(label.getText()));
		Window.below(shell, Text.class).forEach(text -> texts.add(text.getText()));
		return texts;
	}
}
