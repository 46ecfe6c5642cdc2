/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;

/**
 * What a person is at work on: the file in the editor and its project.
 */
public final class AtWork {

	private AtWork() {
	}

	/** The file in the editor that a page shows; empty without one. */
	public static Optional<IFile> file(IWorkbenchPage page) {
		IEditorPart active = page == null ? null : page.getActiveEditor();
		return Optional.ofNullable(active == null ? null : Adapters.adapt(active.getEditorInput(), IFile.class));
	}

	/** Its project. To be called by the UI thread. */
	public static Optional<ProjectText> project(IWorkbenchPage page) {
		return file(page).flatMap(ProjectText::around);
	}
}
