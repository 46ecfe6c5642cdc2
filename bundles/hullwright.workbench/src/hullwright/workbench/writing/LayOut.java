/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import hullwright.workbench.live.LanguageService;
import hullwright.workbench.live.Question;
import hullwright.workbench.live.TextPlaces;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentExtension4;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.text.edits.MalformedTreeException;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;
import org.eclipse.text.undo.DocumentUndoManagerRegistry;
import org.eclipse.text.undo.IDocumentUndoManager;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * Lays out the whole text, or the selected lines, as one step to undo. The caret stays at its word.
 */
public final class LayOut extends AbstractHandler {

	private static final FormattingOptions TABS = new FormattingOptions(4, false);

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActiveEditor(event) instanceof ITextEditor editor && editor.isEditable()
				&& editor.getSelectionProvider().getSelection() instanceof ITextSelection selection) {
			IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
			Optional<TextDocumentIdentifier> file = LanguageService.get().identifier(document);
			long stamp = stamp(document);
			file.ifPresent(text -> Job.create("Laying out the text", (IProgressMonitor monitor) -> {
				List<? extends TextEdit> edits = question(text, document, selection).ask(monitor);
				PlatformUI.getWorkbench().getDisplay().asyncExec(() -> apply(editor, document, stamp, edits == null ? List.of() : edits));
			}).schedule());
		}
		return null;
	}

	private static Question<List<? extends TextEdit>> question(TextDocumentIdentifier text, IDocument document, ITextSelection selection) {
		try {
			if (selection.getLength() > 0) {
				Range range = new Range(TextPlaces.position(document, selection.getOffset()),
						TextPlaces.position(document, selection.getOffset() + selection.getLength()));
				return new Question<>(server -> server.getTextDocumentService().rangeFormatting(new DocumentRangeFormattingParams(text, TABS, range)));
			}
		} catch (BadLocationException e) {
			// the text changed; then all of it
		}
		return new Question<>(server -> server.getTextDocumentService().formatting(new DocumentFormattingParams(text, TABS)));
	}

	private static void apply(ITextEditor editor, IDocument document, long stamp, List<? extends TextEdit> edits) {
		if (stamp(document) != stamp) {
			StatusLine.say(editor, "The text was changed meanwhile and is left as it is");
		} else if (edits.isEmpty()) {
			StatusLine.say(editor, "Nothing to lay out; a text with a line that is not understood is left as it is");
		} else {
			IDocumentUndoManager undo = DocumentUndoManagerRegistry.getDocumentUndoManager(document);
			undo.beginCompoundChange();
			try {
				MultiTextEdit whole = new MultiTextEdit();
				for (TextEdit edit : edits) {
					IRegion region = TextPlaces.region(document, edit.getRange());
					whole.addChild(new ReplaceEdit(region.getOffset(), region.getLength(), edit.getNewText()));
				}
				whole.apply(document);
			} catch (MalformedTreeException | BadLocationException e) {
				StatusLine.say(editor, "The text was changed meanwhile and is left as it is");
			} finally {
				undo.endCompoundChange();
			}
		}
	}

	private static long stamp(IDocument document) {
		return document instanceof IDocumentExtension4 stamped ? stamped.getModificationStamp() : 0;
	}
}
