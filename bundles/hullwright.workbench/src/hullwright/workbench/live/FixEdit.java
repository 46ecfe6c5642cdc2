/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBufferManager;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.ResourceOperation;
import org.eclipse.lsp4j.SnippetTextEdit;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.text.edits.MalformedTreeException;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;
import org.eclipse.text.edits.TextEdit;
import org.eclipse.text.undo.DocumentUndoManagerRegistry;
import org.eclipse.text.undo.IDocumentUndoManager;

/**
 * Makes the edit of a fix. All files are looked at before the first is changed, so that it is made whole or not at all.
 */
public final class FixEdit {

	private final CodeAction fix;
	private final OpenDocuments documents;
	private final Map<IDocument, IRegion> written = new HashMap<>();

	/** The edit of a fix which the server offered. */
	public FixEdit(CodeAction fix) {
		this.fix = fix;
		this.documents = LanguageService.get().documents();
	}

	/**
	 * Changes the files. In an editor it is one step to undo and stays unsaved; a file that no editor shows is saved.
	 * To be called by the UI thread.
	 *
	 * @throws CoreException with a sentence for the person, when a file cannot be changed or is no longer what was checked
	 */
	public void make() throws CoreException {
		ITextFileBufferManager buffers = FileBuffers.getTextFileBufferManager();
		Map<ITextFileBuffer, MultiTextEdit> edits = new LinkedHashMap<>();
		List<IPath> connected = new ArrayList<>();
		try {
			for (Either<TextDocumentEdit, ResourceOperation> change : fix.getEdit().getDocumentChanges()) {
				TextDocumentEdit edit = change.getLeft();
				IPath location = location(edit);
				buffers.connect(location, LocationKind.IFILE, null);
				connected.add(location);
				ITextFileBuffer buffer = buffers.getTextFileBuffer(location, LocationKind.IFILE);
				edits.put(buffer, edit(buffer.getDocument(), edit));
			}
			for (Map.Entry<ITextFileBuffer, MultiTextEdit> entry : edits.entrySet()) {
				boolean shown = entry.getKey().isShared() || entry.getKey().isDirty();
				apply(entry.getKey().getDocument(), entry.getValue());
				if (!shown) {
					entry.getKey().commit(null, false);
				}
			}
		} finally {
			for (IPath location : connected) {
				buffers.disconnect(location, LocationKind.IFILE, null);
			}
		}
	}

	/** Where the first change of a document is, after {@link #make}. */
	public Optional<IRegion> placeIn(IDocument document) {
		return Optional.ofNullable(written.get(document));
	}

	private IPath location(TextDocumentEdit edit) throws CoreException {
		Path path = FileUris.path(edit.getTextDocument().getUri())
				.orElseThrow(() -> refusal("The file " + edit.getTextDocument().getUri() + " is not on this machine."));
		Integer version = edit.getTextDocument().getVersion();
		Optional<OpenDocument> open = documents.at(path);
		if (version != null && (open.isEmpty() || open.get().version() != version)) {
			throw refusal("The text of " + path.getFileName() + " has changed since this was found. Try again.");
		}
		IResource resource = FileUris.resource(path)
				.orElseThrow(() -> refusal("The file " + path + " is not in the workspace."));
		return resource.getFullPath();
	}

	private static MultiTextEdit edit(IDocument document, TextDocumentEdit edit) {
		MultiTextEdit whole = new MultiTextEdit();
		for (Either<org.eclipse.lsp4j.TextEdit, SnippetTextEdit> part : edit.getEdits()) {
			org.eclipse.lsp4j.TextEdit replace = part.getLeft();
			int start = FindingMarkers.offset(document, replace.getRange().getStart());
			int end = FindingMarkers.offset(document, replace.getRange().getEnd());
			whole.addChild(new ReplaceEdit(start, end - start, replace.getNewText()));
		}
		return whole;
	}

	private void apply(IDocument document, MultiTextEdit edit) throws CoreException {
		IDocumentUndoManager undo = DocumentUndoManagerRegistry.getDocumentUndoManager(document);
		if (undo != null) {
			undo.beginCompoundChange();
		}
		try {
			edit.apply(document);
			TextEdit first = edit.getChildren()[0];
			written.put(document, new Region(first.getOffset(), first.getLength()));
		} catch (MalformedTreeException | BadLocationException e) {
			throw new CoreException(Status.error("The change does not fit the text any more. Nothing was changed in this file.", e));
		} finally {
			if (undo != null) {
				undo.endCompoundChange();
			}
		}
	}

	private static CoreException refusal(String sentence) {
		return new CoreException(Status.error(sentence));
	}
}
