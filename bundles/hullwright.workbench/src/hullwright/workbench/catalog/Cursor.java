/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import hullwright.check.OfferedPart;
import hullwright.check.PartRefused;
import hullwright.check.ProjectTexts;
import hullwright.check.Snapshot;
import hullwright.network.part.Connector;
import hullwright.rules.edit.TextChange;
import hullwright.workbench.live.ProjectText;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.text.Region;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * The place in the text where a person is at work: the editor, its project, and where its cursor is.
 *
 * @param editor the editor
 * @param text the project that its file belongs to
 * @param file the file, as the engine names it
 * @param offset where its cursor is
 */
record Cursor(ITextEditor editor, ProjectText text, String file, int offset) {

	/** The place in the editor that a page shows; empty without one. To be called by the UI thread. */
	static Optional<Cursor> in(IWorkbenchPage page) {
		IEditorPart active = page == null ? null : page.getActiveEditor();
		IFile file = active == null ? null : Adapters.adapt(active.getEditorInput(), IFile.class);
		ITextEditor editor = active == null ? null : Adapters.adapt(active, ITextEditor.class);
		if (file == null || editor == null || !"hull".equals(file.getFileExtension())) {
			return Optional.empty();
		}
		int offset = editor.getSelectionProvider().getSelection() instanceof ITextSelection selection ? selection.getOffset() : 0;
		return ProjectText.around(file).flatMap(text -> text.relative(file).map(name -> new Cursor(editor, text, name, offset)));
	}

	/** The connectors of the part that stands there. Not in the UI thread. */
	CompletableFuture<Set<Connector>> connectors() {
		return CompletableFuture.supplyAsync(() -> ProjectText.engine().texts().connectorsAt(read(), file, offset));
	}

	private Snapshot read() {
		try {
			return text.read();
		} catch (IOException e) {
			throw new CompletionException(e);
		}
	}

	private record Worked(Snapshot snapshot, List<TextChange> changes) {
	}

	/** Puts a part there, worked out in the background, as one step to undo; or tells why it has no place. */
	void insert(OfferedPart part) {
		Display display = editor.getSite().getShell().getDisplay();
		CompletableFuture.supplyAsync(() -> {
			ProjectTexts texts = ProjectText.engine().texts();
			Snapshot snapshot = read();
			try {
				return new Worked(snapshot, texts.insert(snapshot, file, offset, part));
			} catch (PartRefused e) {
				throw new CompletionException(e);
			}
		}).whenComplete((worked, failure) -> display.asyncExec(() -> {
			if (failure != null) {
				refuse(failure);
			} else {
				write(worked);
			}
		}));
	}

	private static void refuse(Throwable failure) {
		Throwable cause = failure instanceof CompletionException && failure.getCause() != null ? failure.getCause() : failure;
		StatusManager.getManager().handle(cause instanceof PartRefused ? Status.info(cause.getMessage())
				: Status.error("The part could not be inserted: " + cause.getMessage(), cause), StatusManager.SHOW);
	}

	private void write(Worked worked) {
		try {
			text.change(worked.snapshot, worked.changes);
			IRegion place = placeOfLast(worked.changes);
			editor.selectAndReveal(place.getOffset(), place.getLength());
			editor.getSite().getPage().activate(editor);
		} catch (CoreException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
		}
	}

	/** Where the last change stands after all of them, without the white space around it. */
	private static IRegion placeOfLast(List<TextChange> changes) {
		TextChange last = changes.get(changes.size() - 1);
		int before = changes.stream().filter(each -> each != last && each.offset() <= last.offset()).mapToInt(each -> each.replacement().length() - each.length()).sum();
		String written = last.replacement();
		return new Region(last.offset() + before + written.length() - written.stripLeading().length(), written.strip().length());
	}
}
