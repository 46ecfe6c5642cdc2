/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.check.Addition;
import hullwright.check.Snapshot;
import hullwright.rules.edit.TextChange;
import hullwright.workbench.live.ProjectText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * Writes an addition into an editor, unsaved and as one step to undo, and shows it there.
 */
public final class AddedText {

	private AddedText() {
	}

	/**
	 * Writes it. To be called by the UI thread.
	 *
	 * @param more changes of the same file that the addition needs
	 * @return whether it was written; if not, the person has been told why
	 */
	public static boolean write(ProjectText text, Snapshot snapshot, Addition addition, List<TextChange> more) {
		String name = addition.block().file();
		try {
			IFile file = text.file(name).orElseThrow(() -> refusal("The file " + name + " is not in the workspace any more."));
			List<TextChange> changes = new ArrayList<>(more);
			changes.add(ProjectText.engine().texts().rendered(snapshot, addition)
					.orElseThrow(() -> refusal("The text has changed. Open the dialog again.")));
			Optional<ITextEditor> editor = Writing.open(file, "");
			text.change(snapshot, changes);
			editor.ifPresent(each -> Writing.reveal(each, addition.statement()));
			return true;
		} catch (CoreException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
			return false;
		}
	}

	private static CoreException refusal(String sentence) {
		return new CoreException(Status.error(sentence));
	}
}
