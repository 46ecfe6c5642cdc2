/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import java.util.Optional;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.ltk.ui.refactoring.RefactoringWizard;
import org.eclipse.ltk.ui.refactoring.UserInputWizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;

/**
 * Asks for the new name, and shows what would change.
 */
final class RenameWizard extends RefactoringWizard {

	private final NameChange change;

	RenameWizard(NameChange change) {
		super(change, DIALOG_BASED_USER_INTERFACE | PREVIEW_EXPAND_FIRST_NODE);
		this.change = change;
		setDefaultPageTitle(change.getName());
	}

	@Override
	protected void addUserInputPages() {
		addPage(new NamePage(change));
	}

	/** Holds each name against the texts while it is typed, so that nobody finds out at the end that it is taken. */
	private static final class NamePage extends UserInputWizardPage {

		private static final int PAUSE_MILLIS = 150;

		private final NameChange change;
		private final Job trial = Job.create("Trying the name", (IProgressMonitor monitor) -> tryName(monitor));

		NamePage(NameChange change) {
			super("name");
			this.change = change;
			trial.setSystem(true);
		}

		@Override
		public void createControl(Composite parent) {
			Composite page = new Composite(parent, SWT.NONE);
			GridLayoutFactory.swtDefaults().numColumns(2).applyTo(page);
			new Label(page, SWT.NONE).setText("&New name:");
			Text name = new Text(page, SWT.BORDER);
			GridDataFactory.fillDefaults().grab(true, false).hint(convertWidthInCharsToPixels(40), SWT.DEFAULT).applyTo(name);
			name.setText(change.oldName());
			name.selectAll();
			name.addModifyListener(event -> entered(name.getText().strip()));
			name.addDisposeListener(event -> trial.cancel());
			setPageComplete(false);
			setControl(page);
			name.setFocus();
		}

		private void entered(String name) {
			trial.cancel();
			change.setNewName(name);
			setErrorMessage(null);
			setPageComplete(false);
			if (!name.isEmpty() && !name.equals(change.oldName())) {
				trial.schedule(PAUSE_MILLIS);
			}
		}

		private void tryName(IProgressMonitor monitor) {
			String tried = change.newName();
			Optional<String> refusal = change.refusal(monitor);
			PlatformUI.getWorkbench().getDisplay().asyncExec(() -> {
				if (getControl() != null && !getControl().isDisposed() && tried.equals(change.newName())) {
					setErrorMessage(refusal.orElse(null));
					setPageComplete(refusal.isEmpty());
				}
			});
		}
	}
}
