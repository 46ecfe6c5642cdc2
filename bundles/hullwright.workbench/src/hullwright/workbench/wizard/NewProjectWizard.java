/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.workbench.ExampleProject;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;

/**
 * Makes a project: with a first network, with the profile only, or as a copy of an example.
 */
public final class NewProjectWizard extends Wizard implements INewWizard {

	private final ProjectPage project = new ProjectPage();
	private final FirstSeriesPage series = new FirstSeriesPage(project);

	/** Made by the workbench. */
	public NewProjectWizard() {
		setWindowTitle("New yard project");
		setNeedsProgressMonitor(true);
	}

	@Override
	public void init(IWorkbench workbench, IStructuredSelection selection) {
		// a project stands for itself, whatever is selected
	}

	@Override
	public void addPages() {
		addPage(project);
		addPage(series);
	}

	@Override
	public IWizardPage getNextPage(IWizardPage page) {
		return page == project && !project.wantsSeries() ? null : super.getNextPage(page);
	}

	@Override
	public boolean canFinish() {
		return project.isPageComplete() && (!project.wantsSeries() || series.isPageComplete());
	}

	@Override
	public boolean performFinish() {
		String name = project.project();
		Optional<ExampleProject> example = project.example();
		Map<String, String> texts = project.wantsSeries() ? series.texts() : project.texts();
		IProject made = ResourcesPlugin.getWorkspace().getRoot().getProject(name);
		boolean done = Writing.done(getContainer(), "The project was not made.", monitor -> {
			if (example.isPresent()) {
				example.get().copy(name, monitor);
			} else {
				made.create(monitor);
				made.open(monitor);
				made.setDefaultCharset("UTF-8", monitor);
				Writing.write(made, texts, monitor);
			}
		});
		if (done) {
			IFile first = made.getFile(texts.keySet().iterator().next());
			Writing.open(first, "");
		}
		return done;
	}
}
