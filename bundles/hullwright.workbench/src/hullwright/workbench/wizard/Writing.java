/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.workbench.live.ProjectText;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Path;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.IWizardContainer;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.WorkspaceModifyOperation;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.texteditor.ITextEditor;
import org.eclipse.ui.wizards.newresource.BasicNewResourceWizard;

/**
 * What wizards do with the workspace: find out where the person is, write files, and show what was written.
 */
final class Writing {

	private Writing() {
	}

	/** What is to be done in the workspace, with a sentence for the person where it fails. */
	@FunctionalInterface
	interface Work {
		void run(IProgressMonitor monitor) throws CoreException;
	}

	/**
	 * Does something in the workspace while the wizard stays alive, and tells what went wrong.
	 *
	 * @return whether it was done
	 */
	static boolean done(IWizardContainer container, String failure, Work work) {
		try {
			container.run(true, true, new WorkspaceModifyOperation() {
				@Override
				protected void execute(IProgressMonitor monitor) throws CoreException {
					work.run(monitor);
				}
			});
			return true;
		} catch (InvocationTargetException e) {
			Throwable cause = e.getCause();
			StatusManager.getManager().handle(Status.error(failure + " " + (cause.getMessage() == null ? "" : cause.getMessage()), cause),
					StatusManager.SHOW | StatusManager.LOG);
			return false;
		} catch (InterruptedException e) {
			// called off
			return false;
		}
	}

	/** Writes new files; those that are there already are left alone. */
	static void write(IContainer folder, Map<String, String> texts, IProgressMonitor monitor) throws CoreException {
		for (Map.Entry<String, String> text : texts.entrySet()) {
			IFile file = folder.getFile(new Path(text.getKey()));
			if (!file.exists()) {
				file.create(text.getValue().getBytes(StandardCharsets.UTF_8), IResource.NONE, monitor);
			}
		}
	}

	/** Opens a file, shows where a text begins in it, and shows it in the projects. */
	static Optional<ITextEditor> open(IFile file, String place) {
		IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
		BasicNewResourceWizard.selectAndReveal(file, page.getWorkbenchWindow());
		try {
			IEditorPart editor = IDE.openEditor(page, file);
			if (editor instanceof ITextEditor text) {
				reveal(text, place);
				return Optional.of(text);
			}
		} catch (CoreException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
		}
		return Optional.empty();
	}

	/** Selects the first line of a text in an editor, searched from its end. */
	static void reveal(ITextEditor editor, String place) {
		String line = place.lines().findFirst().orElse("");
		int at = line.isEmpty() ? -1 : editor.getDocumentProvider().getDocument(editor.getEditorInput()).get().lastIndexOf(line);
		if (at >= 0) {
			editor.selectAndReveal(at, line.length());
		}
	}

	/** The resource that the person has chosen, or else the one in the editor. */
	static Optional<IResource> chosen(IWorkbench workbench, IStructuredSelection selection) {
		IResource chosen = selection == null ? null : Adapters.adapt(selection.getFirstElement(), IResource.class);
		if (chosen == null && workbench.getActiveWorkbenchWindow() != null && workbench.getActiveWorkbenchWindow().getActivePage() != null) {
			IEditorPart editor = workbench.getActiveWorkbenchWindow().getActivePage().getActiveEditor();
			chosen = editor == null ? null : Adapters.adapt(editor.getEditorInput(), IResource.class);
		}
		return Optional.ofNullable(chosen);
	}

	/** The open project of a resource. */
	static Optional<IProject> project(Optional<IResource> chosen) {
		return chosen.map(IResource::getProject).filter(IProject::isOpen);
	}

	/** The project of a resource as the engine reads it. */
	static Optional<ProjectText> text(Optional<IResource> chosen) {
		return chosen.filter(resource -> resource.getProject() != null && resource.getProject().isOpen()).flatMap(ProjectText::around);
	}

	/** A selection of nothing or one. */
	static IStructuredSelection selection(IResource resource) {
		return resource == null ? StructuredSelection.EMPTY : new StructuredSelection(resource);
	}
}
