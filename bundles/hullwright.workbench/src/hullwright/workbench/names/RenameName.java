/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import hullwright.workbench.live.Question;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.ltk.ui.refactoring.RefactoringWizardOpenOperation;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

/**
 * Renames what is named at the caret, wherever it is named.
 */
public final class RenameName extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Shell shell = HandlerUtil.getActiveShell(event);
		NamePlace.ofCaret(event).ifPresent(place -> Job.create("Looking at the name", (IProgressMonitor monitor) -> {
			try {
				PrepareRenameResult name = new Question<>(server -> server.getTextDocumentService()
						.prepareRename(new PrepareRenameParams(place.file(), place.position()))).ask(monitor).getSecond();
				shell.getDisplay().asyncExec(() -> rename(shell, new NameChange(place, name.getPlaceholder())));
			} catch (CoreException e) {
				shell.getDisplay().asyncExec(() -> MessageDialog.openInformation(shell, "Rename", e.getStatus().getMessage()));
			}
		}).schedule());
		return null;
	}

	private static void rename(Shell shell, NameChange change) {
		try {
			new RefactoringWizardOpenOperation(new RenameWizard(change)).run(shell, change.getName());
		} catch (InterruptedException e) {
			// another change of the workspace was waited for, and the person stopped that
			ILog.of(RenameName.class).info("Renaming was given up while waiting for the workspace.");
		}
	}
}
