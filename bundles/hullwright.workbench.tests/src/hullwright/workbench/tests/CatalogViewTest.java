/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.Test;

/**
 * Looking for parts by what they do and mate with, and putting one into the text.
 */
class CatalogViewTest {

	private static final String KIT = "import \"standard:parts\"\n\ncatalog Kit {\n\tdevice logger \"Our logger\" { port bus : micro male; load 2 LEN; suits hot }\n}\n";
	private static final String PROFILE = "import \"kit.hull\"\n\nprofile Bench from standard {\n\tapproved catalogs Kit\n}\n";

	/** The composite of the view. To be called in the UI thread. */
	private static Composite view() throws Exception {
		ViewPart view = (ViewPart) Window.page().showView("hullwright.workbench.catalog");
		return (Composite) PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell().getDisplay().getFocusControl().getParent().getParent();
	}

	private static Table table() throws Exception {
		return Window.below(view(), Table.class).get(0);
	}

	private static List<String> parts() throws Exception {
		return Arrays.stream(table().getItems()).map(TableItem::getText).toList();
	}

	private static void words(String words) {
		Window.ui(() -> {
			Window.below(view(), Text.class).get(0).setText(words);
			return null;
		});
	}

	private static void choose(int combo, String choice) {
		Window.ui(() -> {
			Combo field = Window.below(view(), Combo.class).get(combo);
			assertTrue(Arrays.asList(field.getItems()).contains(choice), Arrays.toString(field.getItems()));
			field.setText(choice);
			field.notifyListeners(SWT.Selection, new Event());
			return null;
		});
	}

	private static void run(String command) {
		Window.ui(() -> PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null));
	}

	private static Bench bench(String name) throws Exception {
		return Bench.open(name, Map.of("yard.hull", PROFILE, "kit.hull", KIT, "dinghy.hull", SmallBoat.TEXT), "dinghy.hull");
	}

	@Test
	void partsAreFoundByWordsUseConnectorsZoneAndApproval() throws Exception {
		try (Bench bench = bench("catalog-search")) {
			Window.until("the parts of the house and the built-in ones are there", CatalogViewTest::parts,
					parts -> parts.contains("logger") && parts.contains("light") && parts.contains("serialPaddleLog"));
			words("heading 127250 micro");
			Window.until("a heading sensor is found", CatalogViewTest::parts, parts -> parts.contains("headingSensor") && !parts.contains("light"));
			choose(0, "Tees and blocks");
			Window.until("no tee tells a heading", CatalogViewTest::parts, List::isEmpty);
			words("");
			Window.until("the tees remain", CatalogViewTest::parts, parts -> parts.contains("block4") && !parts.contains("headingSensor"));
			choose(1, "Plugs into mini female");
			Window.until("those for heavy cable", CatalogViewTest::parts, parts -> parts.contains("heavyTee") && !parts.contains("block4"));
			choose(0, "Anything");
			choose(1, "Plugs into anything");
			choose(2, "Suits hot");
			Window.until("what suits heat", CatalogViewTest::parts, parts -> parts.contains("logger") && !parts.contains("light"));
			Window.ui(() -> {
				Button approved = Window.below(view(), Button.class).get(0);
				assertTrue(approved.isEnabled());
				approved.setSelection(true);
				approved.notifyListeners(SWT.Selection, new Event());
				return null;
			});
			Window.until("what may be bought", CatalogViewTest::parts, List.of("logger")::equals);
			Window.until("its declaration is shown", () -> Window.below(view(), StyledText.class).get(0).getText(), text -> text.startsWith("device logger"));
			clear();
		}
	}

	private static void clear() {
		Window.ui(() -> {
			Event escape = new Event();
			escape.keyCode = SWT.ESC;
			Window.below(view(), Text.class).get(0).notifyListeners(SWT.KeyDown, escape);
			return null;
		});
		Window.until("all parts are there again", CatalogViewTest::parts, parts -> parts.size() > 100);
	}

	@Test
	void returnPutsADeviceOnAFreePortAndAddsTheImport() throws Exception {
		try (Bench bench = bench("catalog-insert")) {
			bench.caretAt("drop block.1");
			Window.until("the parts are there", CatalogViewTest::parts, parts -> parts.contains("logger"));
			words("our logger");
			Window.until("the logger is found", CatalogViewTest::parts, List.of("logger")::equals);
			Window.ui(() -> {
				Window.below(view(), Text.class).get(0).notifyListeners(SWT.DefaultSelection, new Event());
				return null;
			});
			String expected = SmallBoat.TEXT.replace("import \"standard:parts\"\n", "import \"standard:parts\"\nimport \"kit.hull\"\n")
					.replace("instrumentDisplay at helm\n", "instrumentDisplay at helm\n\t\tdrop block.2 via 1 m to logger : logger\n");
			Window.until("the drop and the import are written", () -> bench.document().get(), expected::equals);
			assertEquals("drop block.2 via 1 m to logger : logger", Window.ui(() -> bench.text().getSelectionText()));
			run(IWorkbenchCommandConstants.EDIT_UNDO);
			assertEquals(SmallBoat.TEXT, Window.ui(() -> bench.document().get()), "one step takes both back");
			clear();
		}
	}

	@Test
	void whatPlugsIntoThePartAtTheCursorIsOffered() throws Exception {
		try (Bench bench = bench("catalog-fits")) {
			bench.caretAt("terminator left");
			run("hullwright.workbench.insertPart");
			Window.until("what has micro pins", CatalogViewTest::parts,
					parts -> parts.contains("block4") && parts.contains("logger") && !parts.contains("heavyTee") && !parts.contains("pushTee"));
			clear();
		}
	}

	@Test
	void aBuiltInCatalogOpensForReadingOnly() throws Exception {
		try (Bench bench = bench("catalog-declaration")) {
			Window.until("the parts are there", CatalogViewTest::parts, parts -> parts.contains("midTap"));
			words("midTap");
			Window.until("the tap is found", CatalogViewTest::parts, parts -> parts.equals(List.of("midTap")));
			Window.ui(() -> {
				Event key = new Event();
				key.keyCode = SWT.F3;
				table().notifyListeners(SWT.KeyDown, key);
				return null;
			});
			ITextEditor editor = Window.until("the catalog is open", () -> Window.page().getActiveEditor() instanceof ITextEditor text
					&& text.getEditorInput().getName().equals("parts.hull") ? text : null, found -> found != null);
			assertFalse(Window.ui(editor::isEditable));
			assertEquals("midTap", Window.ui(() -> ((org.eclipse.jface.text.ITextSelection) editor.getSelectionProvider().getSelection()).getText()));
			Window.ui(() -> Window.page().closeEditor(editor, false));
			clear();
		}
	}
}
