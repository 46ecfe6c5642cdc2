/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import java.util.Map;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;

/**
 * Makes a file with a new series.
 */
public final class NewSeriesWizard extends Wizard implements INewWizard {

	private SeriesPage page;

	/** Made by the workbench. */
	public NewSeriesWizard() {
		setWindowTitle("New series");
		setNeedsProgressMonitor(true);
	}

	@Override
	public void init(IWorkbench workbench, IStructuredSelection selection) {
		page = new SeriesPage(Writing.project(Writing.chosen(workbench, selection)));
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		IFile file = page.target();
		Map<String, String> texts = page.texts();
		boolean done = Writing.done(getContainer(), "The series was not written.", monitor -> Writing.write(file.getParent(), texts, monitor));
		if (done) {
			Writing.open(file, "series ");
		}
		return done;
	}
}
