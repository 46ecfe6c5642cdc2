/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * Gives back what was written and not saved when an earlier session ended all of a sudden.
 */
public final class Recovery {

	private Recovery() {
	}

	/** Asks whether to bring back what was left behind, and keeps copies from now on. To be called once, by the UI thread. */
	public static void start(IWorkbenchWindow window) {
		UnsavedCopies copies = UnsavedCopies.ofWorkspace();
		Map<IFile, String> found = new TreeMap<>((one, other) -> one.getFullPath().toString().compareTo(other.getFullPath().toString()));
		copies.leftBehind().forEach((path, text) -> UnsavedCopies.original(path).filter(file -> !holds(file, text)).ifPresent(file -> found.put(file, text)));
		if (!found.isEmpty()) {
			String names = found.keySet().stream().map(file -> file.getProject().getName() + "/" + file.getProjectRelativePath()).collect(Collectors.joining("\n"));
			boolean wanted = MessageDialog.open(MessageDialog.QUESTION, window.getShell(), "Unsaved changes",
					"Hullwright ended while these texts were not saved:\n\n" + names + "\n\nBring the changes back into editors? Nothing is saved by that.",
					0, "Bring back", "Discard") == 0;
			if (wanted) {
				found.forEach((file, text) -> bringBack(window.getActivePage(), file, text));
			}
		}
		copies.forget();
		copies.keep();
	}

	private static boolean holds(IFile file, String text) {
		try {
			return file.readString().equals(text);
		} catch (CoreException e) {
			return false;
		}
	}

	/** As one change of the text as it is saved, so that undo leads back to that. */
	private static void bringBack(IWorkbenchPage page, IFile file, String text) {
		try {
			if (IDE.openEditor(page, file) instanceof ITextEditor editor) {
				IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
				document.set(text);
			}
		} catch (CoreException e) {
			ILog.of(Recovery.class).log(e.getStatus());
		}
	}
}
