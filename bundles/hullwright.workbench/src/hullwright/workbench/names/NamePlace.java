/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import hullwright.workbench.live.LanguageService;
import hullwright.workbench.live.TextPlaces;
import java.util.Optional;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * A place in a text that an editor shows.
 *
 * @param file     the text, as the server knows it
 * @param position the place
 */
record NamePlace(TextDocumentIdentifier file, Position position) {

	/** A place in a document, if the server knows it. */
	static Optional<NamePlace> in(IDocument document, int offset) {
		try {
			Position position = TextPlaces.position(document, offset);
			return LanguageService.get().identifier(document).map(file -> new NamePlace(file, position));
		} catch (BadLocationException e) {
			// the text became shorter
			return Optional.empty();
		}
	}

	/** Where the caret of the active editor is. */
	static Optional<NamePlace> ofCaret(ExecutionEvent event) {
		return HandlerUtil.getActiveEditor(event) instanceof ITextEditor editor
				&& editor.getSelectionProvider().getSelection() instanceof ITextSelection selection
						? in(editor.getDocumentProvider().getDocument(editor.getEditorInput()), selection.getOffset())
						: Optional.empty();
	}
}
