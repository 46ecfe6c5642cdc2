/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.check.Addition;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;

/**
 * Adds a part to a catalog of the house, or makes a catalog for it.
 */
public final class NewPartWizard extends Wizard implements INewWizard {

	private PartPage page;

	/** Made by the workbench. */
	public NewPartWizard() {
		setWindowTitle("New catalog part");
		setNeedsProgressMonitor(true);
	}

	@Override
	public void init(IWorkbench workbench, IStructuredSelection selection) {
		page = new PartPage(Writing.chosen(workbench, selection));
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		Optional<Addition> addition = page.addition();
		if (addition.isPresent()) {
			return AddedText.write(page.read().text(), page.read().snapshot(), addition.get(), List.of());
		}
		IFile file = page.newFile();
		Map<String, String> texts = Map.of(file.getName(), page.newCatalog());
		boolean done = Writing.done(getContainer(), "The catalog was not written.", monitor -> Writing.write(file.getParent(), texts, monitor));
		if (done) {
			Writing.open(file, "catalog ");
		}
		return done;
	}
}
