/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.ui.IEditorPart;

/**
 * The line below the window, as far as an editor speaks there.
 */
public final class StatusLine {

	private StatusLine() {
	}

	/** Says something that needs no answer. */
	public static void say(IEditorPart editor, String sentence) {
		of(editor).setMessage(sentence);
	}

	/** Says why something does not go; null takes it back. */
	public static void refuse(IEditorPart editor, String sentence) {
		of(editor).setErrorMessage(sentence);
	}

	private static IStatusLineManager of(IEditorPart editor) {
		return editor.getEditorSite().getActionBars().getStatusLineManager();
	}
}
