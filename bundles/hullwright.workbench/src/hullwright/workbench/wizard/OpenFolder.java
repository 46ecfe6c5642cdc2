/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.wizards.newresource.BasicNewResourceWizard;

/**
 * Makes a project of a folder that is somewhere else, such as in a repository. Its texts stay where they are.
 */
public final class OpenFolder extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
		DirectoryDialog dialog = new DirectoryDialog(window.getShell(), SWT.OPEN | SWT.SHEET);
		dialog.setText("Open folder");
		dialog.setMessage("The folder of a yard project. Its texts stay where they are; a small file .project is written beside them.");
		String folder = dialog.open();
		if (folder != null) {
			open(Path.of(folder), window);
		}
		return null;
	}

	/** Makes the project in the background and shows it; what goes wrong is told. */
	public static void open(Path folder, IWorkbenchWindow window) {
		WorkspaceJob job = new WorkspaceJob("Opening the folder " + folder.getFileName()) {
			@Override
			public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
				IProject project = project(folder, monitor);
				window.getShell().getDisplay().asyncExec(() -> {
					if (!window.getShell().isDisposed()) {
						BasicNewResourceWizard.selectAndReveal(project, window);
					}
				});
				return Status.OK_STATUS;
			}
		};
		job.setRule(ResourcesPlugin.getWorkspace().getRoot());
		job.setUser(true);
		job.schedule();
	}

	private static IProject project(Path folder, IProgressMonitor monitor) throws CoreException {
		IWorkspace workspace = ResourcesPlugin.getWorkspace();
		SubMonitor progress = SubMonitor.convert(monitor, 2);
		IPath location = IPath.fromPath(folder);
		for (IProject each : workspace.getRoot().getProjects()) {
			if (location.equals(each.getLocation())) {
				each.open(progress.split(2));
				return each;
			}
		}
		if (!Files.isDirectory(folder)) {
			throw new CoreException(Status.error("There is no folder " + folder + "."));
		}
		IPath file = location.append(IProjectDescription.DESCRIPTION_FILE_NAME);
		IProjectDescription description = file.toFile().exists() ? workspace.loadProjectDescription(file)
				: workspace.newProjectDescription(folder.getFileName().toString());
		description.setName(free(description.getName()));
		// a folder in the workspace is where its project would be anyway
		boolean inside = location.removeLastSegments(1).equals(workspace.getRoot().getLocation());
		if (inside) {
			description.setName(location.lastSegment());
		}
		description.setLocation(inside ? null : location);
		IProject project = workspace.getRoot().getProject(description.getName());
		IStatus fits = workspace.validateProjectLocation(project, description.getLocation());
		if (!fits.isOK()) {
			throw new CoreException(Status.error("The folder " + folder + " cannot be a project: " + fits.getMessage()));
		}
		project.create(description, progress.split(1));
		project.open(progress.split(1));
		return project;
	}

	private static String free(String wished) {
		String name = wished;
		for (int number = 2; ResourcesPlugin.getWorkspace().getRoot().getProject(name).exists(); number++) {
			name = wished + "-" + number;
		}
		return name;
	}
}
