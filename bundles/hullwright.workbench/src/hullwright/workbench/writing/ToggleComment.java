/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import java.util.List;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.text.TextUtilities;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * Puts the selected lines into comments, or takes them out if all of them are comments. One step to undo.
 */
public final class ToggleComment extends AbstractHandler {

	private static final String COMMENT = "//";

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActiveEditor(event) instanceof ITextEditor editor && editor.isEditable()
				&& editor.getSelectionProvider().getSelection() instanceof ITextSelection selection) {
			try {
				toggle(editor, editor.getDocumentProvider().getDocument(editor.getEditorInput()), selection);
			} catch (BadLocationException e) {
				// the text became shorter under the command
			}
		}
		return null;
	}

	private static void toggle(ITextEditor editor, IDocument document, ITextSelection selection) throws BadLocationException {
		int first = document.getLineOfOffset(selection.getOffset());
		int last = document.getLineOfOffset(selection.getOffset() + Math.max(0, selection.getLength() - 1));
		int start = document.getLineOffset(first);
		int end = document.getLineOffset(last) + document.getLineInformation(last).getLength();
		String before = document.get(start, end - start);
		String delimiter = TextUtilities.getDefaultLineDelimiter(document);
		List<String> lines = List.of(before.split("\\R", -1));
		String after = String.join(delimiter, toggled(lines));
		document.replace(start, end - start, after);
		if (selection.getLength() > 0) {
			editor.selectAndReveal(start, after.length());
		} else {
			int inLine = selection.getOffset() - start;
			int shift = after.length() - before.length();
			editor.selectAndReveal(start + Math.max(0, Math.min(after.length(), inLine + shift)), 0);
		}
	}

	/** The lines the other way round; empty lines stay as they are. */
	static List<String> toggled(List<String> lines) {
		boolean all = lines.stream().filter(line -> !line.isBlank()).allMatch(line -> line.stripLeading().startsWith(COMMENT));
		int indent = lines.stream().filter(line -> !line.isBlank()).mapToInt(line -> line.length() - line.stripLeading().length()).min().orElse(0);
		return lines.stream().map(line -> line.isBlank() ? line : all ? uncommented(line) : line.substring(0, indent) + COMMENT + " " + line.substring(indent)).toList();
	}

	private static String uncommented(String line) {
		int at = line.indexOf(COMMENT);
		String rest = line.substring(at + COMMENT.length());
		return line.substring(0, at) + (rest.startsWith(" ") ? rest.substring(1) : rest);
	}
}
