/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import hullwright.workbench.editor.HullText;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.search.ui.NewSearchUI;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * Lists all places that name what is named at the caret, in the platform's Search view.
 */
public final class FindUses extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActiveEditor(event) instanceof ITextEditor editor
				&& editor.getSelectionProvider().getSelection() instanceof ITextSelection selection) {
			IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
			HullText.wordAt(document, selection.getOffset()).ifPresent(word -> NamePlace.in(document, word.getOffset()).ifPresent(place -> {
				try {
					NewSearchUI.runQueryInBackground(new UsesQuery(document.get(word.getOffset(), word.getLength()), place));
				} catch (BadLocationException e) {
					// the text changed under the command
				}
			}));
		}
		return null;
	}
}
