/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/**
 * Shows in the status line where in the boat the caret is.
 */
public final class WhereShown extends CaretReconciler {

	private static final int PAUSE_MILLIS = 150;

	/** Installed by the platform. */
	public WhereShown() {
		super(PAUSE_MILLIS);
	}

	@Override
	void caretRests(ISourceViewer at) {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		IEditorPart editor = window == null || window.getActivePage() == null ? null : window.getActivePage().getActiveEditor();
		if (at.getTextWidget().isFocusControl() && editor != null) {
			try {
				StatusLine.say(editor, WhereInBoat.at(at.getDocument(), at.getSelectedRange().x));
			} catch (BadLocationException e) {
				// the text is shorter by now, and the caret elsewhere
			}
		}
	}
}
