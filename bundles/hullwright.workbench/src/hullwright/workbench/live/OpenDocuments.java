/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.lang.ide.EditorLanguage;
import hullwright.workbench.writing.ForReadingOnly;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.IFileBufferListener;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBufferManager;
import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.text.IDocument;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;

/**
 * The .hull files that any editor has open. The platform's file buffers say so, whichever editor it is.
 */
final class OpenDocuments implements IFileBufferListener {

	private final LanguageService service;
	private final Map<Path, OpenDocument> open = new ConcurrentHashMap<>();

	OpenDocuments(LanguageService service) {
		this.service = service;
	}

	void listen() {
		ITextFileBufferManager buffers = FileBuffers.getTextFileBufferManager();
		buffers.addFileBufferListener(this);
		for (IFileBuffer buffer : buffers.getFileBuffers()) {
			bufferCreated(buffer);
		}
	}

	Optional<OpenDocument> at(Path path) {
		return Optional.ofNullable(open.get(path));
	}

	/** Those in a folder and below it. */
	List<OpenDocument> in(Path folder) {
		return open.values().stream().filter(document -> document.path().startsWith(folder)).toList();
	}

	/** Whether the file at this place, or one in the folder at this place, has changes that are not saved. */
	boolean anyUnsavedIn(Path place) {
		return open.values().stream().anyMatch(document -> document.path().startsWith(place) && document.buffer().isDirty());
	}

	Optional<OpenDocument> of(IDocument document) {
		return open.values().stream().filter(candidate -> candidate.document() == document).findAny();
	}

	@Override
	public void bufferCreated(IFileBuffer buffer) {
		if (buffer instanceof ITextFileBuffer text && isHull(buffer) && ForReadingOnly.reason(text.getDocument()).isEmpty()) {
			FileUris.path(buffer).ifPresent(path -> open.computeIfAbsent(path, key -> new OpenDocument(service, key, text)).opened());
		}
	}

	@Override
	public void bufferDisposed(IFileBuffer buffer) {
		of(buffer).ifPresent(document -> {
			open.remove(document.path());
			document.closed();
			String uri = document.uri();
			service.send(server -> server.getTextDocumentService()
					.didClose(new DidCloseTextDocumentParams(new TextDocumentIdentifier(uri))));
		});
	}

	@Override
	public void dirtyStateChanged(IFileBuffer buffer, boolean isDirty) {
		if (!isDirty) {
			of(buffer).ifPresent(document -> service.send(server -> server.getTextDocumentService()
					.didSave(new DidSaveTextDocumentParams(new TextDocumentIdentifier(document.uri())))));
		}
	}

	private Optional<OpenDocument> of(IFileBuffer buffer) {
		return open.values().stream().filter(candidate -> candidate.buffer() == buffer).findAny();
	}

	private static boolean isHull(IFileBuffer buffer) {
		IPath location = buffer.getLocation();
		String name = location != null ? location.lastSegment() : buffer.getFileStore().getName();
		return name != null && name.endsWith("." + EditorLanguage.FILE_EXTENSION);
	}

	@Override
	public void bufferContentAboutToBeReplaced(IFileBuffer buffer) {
		// the document's own listener tells
	}

	@Override
	public void bufferContentReplaced(IFileBuffer buffer) {
		// the document's own listener tells
	}

	@Override
	public void stateChanging(IFileBuffer buffer) {
		// nothing depends on it
	}

	@Override
	public void stateValidationChanged(IFileBuffer buffer, boolean isStateValidated) {
		// nothing depends on it
	}

	@Override
	public void underlyingFileMoved(IFileBuffer buffer, IPath path) {
		// the editor closes this buffer and opens another
	}

	@Override
	public void underlyingFileDeleted(IFileBuffer buffer) {
		// the buffer is disposed of next
	}

	@Override
	public void stateChangeFailed(IFileBuffer buffer) {
		// nothing depends on it
	}
}
