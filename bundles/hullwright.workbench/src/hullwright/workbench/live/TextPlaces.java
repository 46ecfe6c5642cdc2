/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.filesystem.EFS;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * Between the places of the protocol and those of documents and editors.
 */
public final class TextPlaces {

	private TextPlaces() {
	}

	/** The line and character of an offset. */
	public static Position position(IDocument document, int offset) throws BadLocationException {
		int line = document.getLineOfOffset(offset);
		return new Position(line, offset - document.getLineOffset(line));
	}

	/** The offset of a line and character. */
	public static int offset(IDocument document, Position position) throws BadLocationException {
		return document.getLineOffset(position.getLine()) + position.getCharacter();
	}

	/** The piece of text within a range. */
	public static IRegion region(IDocument document, Range range) throws BadLocationException {
		int start = offset(document, range.getStart());
		return new Region(start, offset(document, range.getEnd()) - start);
	}

	/** The file of the workspace that a URI of the server means. */
	public static Optional<IFile> file(String uri) {
		return FileUris.path(uri).flatMap(FileUris::resource).filter(IFile.class::isInstance).map(IFile.class::cast);
	}

	/** Opens the file of a location and selects its piece of text. To be called by the UI thread. */
	public static void open(IWorkbenchPage page, Location location) throws PartInitException {
		Optional<IFile> file = file(location.getUri());
		Optional<Path> path = FileUris.path(location.getUri());
		IEditorPart part = null;
		if (file.isPresent()) {
			part = IDE.openEditor(page, file.get());
		} else if (path.isPresent()) {
			part = IDE.openEditorOnFileStore(page, EFS.getLocalFileSystem().getStore(path.get().toUri()));
		}
		if (part instanceof ITextEditor editor) {
			select(editor, location.getRange());
		}
	}

	/** Selects a piece of an editor's text, if it is still there. */
	public static void select(ITextEditor editor, Range range) {
		try {
			IRegion region = region(editor.getDocumentProvider().getDocument(editor.getEditorInput()), range);
			editor.selectAndReveal(region.getOffset(), region.getLength());
		} catch (BadLocationException e) {
			// the text is another one by now; the file is open all the same
		}
	}

}
