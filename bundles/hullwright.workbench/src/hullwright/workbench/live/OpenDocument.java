/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.lang.ide.EditorLanguage;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;

/**
 * One open file: tells the server of each change, and knows how many there were.
 */
final class OpenDocument implements IDocumentListener {

	private final LanguageService service;
	private final Path path;
	private final ITextFileBuffer buffer;
	private final AtomicInteger version = new AtomicInteger(1);

	OpenDocument(LanguageService service, Path path, ITextFileBuffer buffer) {
		this.service = service;
		this.path = path;
		this.buffer = buffer;
	}

	Path path() {
		return path;
	}

	String uri() {
		return FileUris.uri(path);
	}

	ITextFileBuffer buffer() {
		return buffer;
	}

	IDocument document() {
		return buffer.getDocument();
	}

	/** Counts the changes; what the server says about another version is about another text. */
	int version() {
		return version.get();
	}

	void opened() {
		document().addDocumentListener(this);
		String text = document().get();
		service.send(server -> server.getTextDocumentService()
				.didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri(), EditorLanguage.FILE_EXTENSION, 1, text))));
	}

	void closed() {
		document().removeDocumentListener(this);
	}

	@Override
	public void documentAboutToBeChanged(DocumentEvent event) {
		// only the text after the change matters
	}

	@Override
	public void documentChanged(DocumentEvent event) {
		int now = version.incrementAndGet();
		String text = event.getDocument().get();
		service.send(server -> server.getTextDocumentService().didChange(new DidChangeTextDocumentParams(
				new VersionedTextDocumentIdentifier(uri(), now), List.of(new TextDocumentContentChangeEvent(text)))));
	}
}
