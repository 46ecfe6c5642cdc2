/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import java.util.List;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;

/**
 * Adds a sold hull to a series.
 */
public final class NewHullWizard extends Wizard implements INewWizard {

	private HullPage page;

	/** Made by the workbench. */
	public NewHullWizard() {
		setWindowTitle("New hull");
	}

	@Override
	public void init(IWorkbench workbench, IStructuredSelection selection) {
		page = new HullPage(Writing.chosen(workbench, selection));
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		return AddedText.write(page.read().text(), page.read().snapshot(), page.addition(), List.of());
	}
}
