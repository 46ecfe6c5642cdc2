/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.guide;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * Takes the last terminator out of the text in the editor, so that somebody new sees what is found. One step to undo.
 */
public final class TakeOutTerminator extends AbstractHandler {

	private static final Pattern TERMINATOR = Pattern.compile("(?m)^[ \\t]*terminator [^\\n]*\\n");

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
		ITextEditor editor = Adapters.adapt(page.getActiveEditor(), ITextEditor.class);
		IDocument document = editor == null ? null : editor.getDocumentProvider().getDocument(editor.getEditorInput());
		Matcher terminator = TERMINATOR.matcher(document == null ? "" : document.get());
		int start = -1;
		int end = -1;
		while (terminator.find()) {
			start = terminator.start();
			end = terminator.end();
		}
		if (start < 0 || !editor.isEditable()) {
			StatusManager.getManager().handle(Status.info("Open the series that you made first: the editor shows no terminator that could be taken out."), StatusManager.SHOW);
			return null;
		}
		try {
			document.replace(start, end - start, "");
			page.activate(editor);
			editor.selectAndReveal(document.getLineOffset(document.getLineOfOffset(start) - 1), 0);
		} catch (BadLocationException e) {
			throw new ExecutionException("The text changed meanwhile.", e);
		}
		return null;
	}
}
