/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.eclipse.core.resources.IProject;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IExportWizard;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Handing findings on as a file.
 */
class ExportFindingsTest {

	@TempDir
	private Path folder;

	@Test
	void eachFormIsWrittenWhole() throws Exception {
		IProject project = Bench.create("export", Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", SmallBoat.TEXT.replace(SmallBoat.TERMINATOR, "")));
		try {
			for (String form : List.of("Markdown, for reviews", "Text", "JSON, for programs", "SARIF, for code hosts", "Test results, for build servers")) {
				Path file = folder.resolve(form.substring(0, 4));
				export(project, form, file.toString());
				String written = Files.readString(file);
				assertTrue(written.contains("terminator-missing"), form + ": " + written);
				assertTrue(written.contains("dinghy.hull"), form + ": " + written);
			}
			try (var left = Files.list(folder)) {
				assertEquals(5, left.count(), "nothing half-written is left");
			}
		} finally {
			project.delete(true, true, null);
		}
	}

	private static void export(IProject project, String form, String file) {
		WizardDialog dialog = Window.ui(() -> {
			IExportWizard wizard = (IExportWizard) PlatformUI.getWorkbench().getExportWizardRegistry().findWizard("hullwright.workbench.export.findings").createWizard();
			wizard.init(PlatformUI.getWorkbench(), new StructuredSelection(project));
			WizardDialog opened = new WizardDialog(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), wizard);
			opened.setBlockOnOpen(false);
			opened.open();
			return opened;
		});
		Window.ui(() -> {
			Composite page = (Composite) dialog.getCurrentPage().getControl();
			List<Combo> combos = Window.below(page, Combo.class);
			assertEquals(project.getName(), combos.get(0).getText());
			combos.get(1).select(Arrays.asList(combos.get(1).getItems()).indexOf(form));
			combos.get(1).notifyListeners(SWT.Selection, new Event());
			Text field = Window.below(page, Text.class).get(0);
			field.setText("no/such/folder");
			assertFalse(dialog.getCurrentPage().isPageComplete());
			field.setText(file);
			Window.below(dialog.getShell(), Button.class).stream().filter(each -> each.getText().replace("&", "").equals("Finish")).findFirst().orElseThrow()
					.notifyListeners(SWT.Selection, new Event());
			return null;
		});
		Window.until("the report is written", () -> dialog.getShell() == null || dialog.getShell().isDisposed(), closed -> closed);
	}
}
