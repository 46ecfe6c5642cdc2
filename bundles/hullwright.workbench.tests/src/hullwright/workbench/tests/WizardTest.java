/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.workbench.wizard.OpenFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Making projects, series, parts and hulls, as a person does in the wizards of File, New.
 */
class WizardTest {

	@TempDir
	private Path elsewhere;
	private WizardDialog dialog;

	/** Opens a wizard as File, New does. */
	private void open(String id, Object selected) {
		Window.ui(() -> {
			INewWizard wizard = (INewWizard) PlatformUI.getWorkbench().getNewWizardRegistry().findWizard("hullwright.workbench.new." + id).createWizard();
			wizard.init(PlatformUI.getWorkbench(), selected == null ? StructuredSelection.EMPTY : new StructuredSelection(selected));
			dialog = new WizardDialog(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), wizard);
			dialog.setBlockOnOpen(false);
			dialog.open();
			return null;
		});
	}

	@AfterEach
	void closeDialog() {
		Window.ui(() -> dialog == null || dialog.getShell() == null || dialog.close());
	}

	/** The control at the right of a label of the page that is shown. To be called in the UI thread. */
	private <C extends Control> C at(String label, Class<C> kind) {
		for (Label each : Window.below((Composite) dialog.getCurrentPage().getControl(), Label.class)) {
			if (each.getText().equals(label + ":")) {
				List<Control> siblings = Arrays.asList(each.getParent().getChildren());
				return kind.cast(siblings.get(siblings.indexOf(each) + 1));
			}
		}
		throw new AssertionError("no field " + label);
	}

	private void type(String label, String text) {
		Window.ui(() -> {
			at(label, Text.class).setText(text);
			return null;
		});
	}

	private String preview() {
		return Window.below((Composite) dialog.getCurrentPage().getControl(), StyledText.class).stream().filter(Control::isVisible).findFirst()
				.map(StyledText::getText).orElse("");
	}

	private String error() {
		return String.valueOf(dialog.getCurrentPage().getErrorMessage());
	}

	private Button finish() {
		return Window.below(dialog.getShell(), Button.class).stream().filter(each -> each.getText().replace("&", "").equals("Finish")).findFirst().orElseThrow();
	}

	private void pressFinish() {
		Window.until("the wizard can be finished", () -> finish().isEnabled() && dialog.getShell().getDefaultButton() == finish(), ready -> ready);
		Window.ui(() -> {
			finish().notifyListeners(SWT.Selection, new Event());
			return null;
		});
		Window.until("the wizard is closed", () -> dialog.getShell() == null || dialog.getShell().isDisposed(), closed -> closed);
	}

	private static ITextEditor editor(String file) {
		return Window.until("an editor shows " + file, () -> Window.page().getActiveEditor() instanceof ITextEditor text
				&& text.getEditorInput().getName().equals(file) ? text : null, found -> found != null);
	}

	private static void close(IProject project) throws Exception {
		Window.ui(() -> {
			for (IEditorReference each : Window.page().getEditorReferences()) {
				if (each.getEditorInput() instanceof IFileEditorInput file && project.equals(file.getFile().getProject())) {
					Window.page().closeEditor(each.getEditor(false), false);
				}
			}
			return null;
		});
		project.delete(true, true, null);
	}

	private static void expectNothingFound(IProject project) throws Exception {
		// what is wrong comes within a moment; that nothing comes is seen by a slip that does
		project.getFile("slip.hull").create("series Slip {\n".getBytes(), true, false, null);
		List<String> found = Window.until("the project is checked", () -> Bench.markers(project), each -> !each.isEmpty());
		assertEquals(List.of(), found.stream().filter(each -> !each.contains("slip.hull") && !each.contains("expected '}'")).toList());
		project.getFile("slip.hull").delete(true, null);
	}

	@Test
	void aProjectWithAFirstNetworkIsSoundAndOpen() throws Exception {
		IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject("wizard-yard");
		open("project", null);
		type("Project", "");
		assertEquals("The project needs a name.", Window.ui(this::error));
		assertFalse(Window.ui(() -> finish().isEnabled()));
		type("Project", "wizard-yard");
		Window.ui(() -> {
			dialog.showPage(dialog.getCurrentPage().getNextPage());
			return null;
		});
		type("Title", "Skerry 27");
		assertEquals("Skerry27", Window.ui(() -> at("Name", Text.class).getText()));
		assertTrue(Window.ui(this::preview).contains("series Skerry27 \"Skerry 27\" revision \"A\" {"));
		pressFinish();
		try {
			ITextEditor editor = editor("skerry-27.hull");
			assertTrue(Window.ui(() -> editor.getDocumentProvider().getDocument(editor.getEditorInput()).get()).contains("drop block.2 to depth"));
			assertTrue(project.getFile("yard.hull").readString().contains("profile WizardYard"));
			expectNothingFound(project);
		} finally {
			close(project);
		}
	}

	@Test
	void anExampleIsCopiedUnderAnyName() throws Exception {
		IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject("my-copy");
		open("project", null);
		Window.ui(() -> {
			org.eclipse.swt.widgets.List choices = at("Begin with", org.eclipse.swt.widgets.List.class);
			choices.select(Arrays.asList(choices.getItems()).indexOf("Example: day-boat"));
			choices.notifyListeners(SWT.Selection, new Event());
			return null;
		});
		assertEquals("day-boat", Window.ui(() -> at("Project", Text.class).getText()));
		assertTrue(Window.ui(() -> at("What it is", Label.class).getText()).startsWith("A day boat of 7 m"));
		assertTrue(Window.ui(this::preview).contains("series Fabelholm23"));
		type("Project", "my-copy");
		pressFinish();
		try {
			editor("fabelholm-23.hull");
			assertTrue(project.getFile("yard.hull").exists());
		} finally {
			close(project);
		}
	}

	@Test
	void aSeriesGoesIntoTheProjectThatIsSelected() throws Exception {
		IProject project = Bench.create("wizard-series", Map.of("yard.hull", Bench.PROFILE));
		open("series", project);
		assertEquals("wizard-series", Window.ui(() -> at("Project", Combo.class).getText()));
		type("Name", "series");
		assertEquals("'series' is a word of the language. Take another name.", Window.ui(this::error));
		type("Name", "Holm");
		type("File", "yard.hull");
		assertEquals("There is a file 'yard.hull' in this project already. Take another name.", Window.ui(this::error));
		type("File", "holm.hull");
		pressFinish();
		try {
			editor("holm.hull");
			expectNothingFound(project);
		} finally {
			close(project);
		}
	}

	@Test
	void aHullIsOneStepToUndoInTheEditorOfItsSeries() throws Exception {
		String series = SmallBoat.TEXT.replace("\tplaces {", "\toptions {\n\t\tarch\n\t\tlamp requires arch\n\t\tone of single, twin\n\t}\n\n\tplaces {")
				.replace("\thull 1\n", "\thull 1 with single\n");
		try (Bench bench = Bench.open("wizard-hull", Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", series), "dinghy.hull")) {
			open("hull", bench.file());
			Window.until("the series is read", () -> at("Options", Table.class).getItemCount(), count -> count == 4);
			assertEquals("2", Window.ui(() -> at("Number", Text.class).getText()));
			check("lamp");
			assertEquals("Option 'lamp' requires 'arch'.", Window.ui(this::error));
			check("arch");
			Window.until("the hull is previewed", this::preview, text -> text.startsWith("hull 2 with arch, lamp, "));
			String statement = Window.ui(this::preview);
			pressFinish();
			assertEquals(series.replace("\thull 1 with single\n", "\thull 1 with single\n\t" + statement + "\n"), Window.ui(() -> bench.document().get()));
			assertTrue(Window.ui(() -> bench.editor().isDirty()));
			Window.ui(() -> PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(IWorkbenchCommandConstants.EDIT_UNDO, null));
			assertEquals(series, Window.ui(() -> bench.document().get()), "one step takes the hull back");
		}
	}

	private void check(String option) {
		Window.ui(() -> {
			Table options = at("Options", Table.class);
			TableItem item = Arrays.stream(options.getItems()).filter(each -> each.getText().equals(option)).findFirst().orElseThrow();
			item.setChecked(true);
			Event event = new Event();
			event.detail = SWT.CHECK;
			event.item = item;
			options.notifyListeners(SWT.Selection, event);
			return null;
		});
	}

	@Test
	void aPartGoesIntoTheCatalogOfTheHouse() throws Exception {
		String kit = "import \"standard:parts\"\n\ncatalog Kit \"Ours\" {\n\tcap blank { end micro male }\n}\n";
		try (Bench bench = Bench.open("wizard-part", Map.of("yard.hull", Bench.PROFILE, "kit.hull", kit), "kit.hull")) {
			open("part", bench.file());
			Window.until("the catalog is read", () -> at("Catalog", Combo.class).getText(), "Kit (kit.hull)"::equals);
			type("Name", "blank");
			assertEquals("The catalog Kit has a part 'blank' already. Take another name.", Window.ui(this::error));
			type("Name", "logger");
			type("Draws from the network", "2");
			assertTrue(Window.ui(this::error).contains("unit"), Window.ui(this::error));
			type("Draws from the network", "2 LEN");
			pressFinish();
			assertTrue(Window.ui(() -> bench.document().get()).contains("\tdevice logger {\n\t\tport bus : micro male\n\t\tsupply 9 V .. 16 V\n\t\tload 2 LEN\n\t}\n}\n"));
		}
	}

	@Test
	void aFolderElsewhereBecomesAProject() throws Exception {
		Path folder = Files.createDirectory(elsewhere.resolve("wizard-elsewhere"));
		Files.writeString(folder.resolve("yard.hull"), Bench.PROFILE);
		OpenFolder.open(folder, PlatformUI.getWorkbench().getWorkbenchWindows()[0]);
		IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject("wizard-elsewhere");
		Window.until("the folder is a project", () -> project.isOpen() && project.getFile("yard.hull").exists(), there -> there);
		project.delete(false, true, null);
		assertTrue(Files.exists(folder.resolve("yard.hull")), "the texts stay where they are");
	}
}
