/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.lang.ide.names.NameTokens;
import hullwright.workbench.editor.HullWordScanner.Kind;
import hullwright.workbench.live.LanguageService;
import hullwright.workbench.live.UiThread;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.jface.text.ITextInputListener;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.lsp4j.SemanticTokensParams;

/**
 * What the names of a text stand for, word by word, asked of the server a moment after the last change. A word keeps its kind while
 * it is moved about, so that nothing changes colour while somebody types.
 */
final class NamesOfText implements IDocumentListener, ITextInputListener {

	private static final int PAUSE_MILLIS = 300;

	private final Runnable changed;
	private final Runnable ask = this::ask;
	private volatile Map<String, Kind> kinds = Map.of();
	private ITextViewer viewer;

	/** @param changed told, by any thread, when a word stands for something else than before */
	NamesOfText(Runnable changed) {
		this.changed = changed;
	}

	/** What a word stands for, where it is not declared. */
	Kind kind(String word) {
		return kinds.getOrDefault(word, Kind.OTHER);
	}

	void follow(ITextViewer text) {
		viewer = text;
		viewer.addTextInputListener(this);
		inputDocumentChanged(null, viewer.getDocument());
	}

	void leave() {
		viewer.removeTextInputListener(this);
		inputDocumentAboutToBeChanged(viewer.getDocument(), null);
		viewer = null;
	}

	@Override
	public void inputDocumentAboutToBeChanged(IDocument old, IDocument fresh) {
		if (old != null) {
			old.removeDocumentListener(this);
		}
	}

	@Override
	public void inputDocumentChanged(IDocument old, IDocument fresh) {
		if (fresh != null) {
			fresh.addDocumentListener(this);
			later();
		}
	}

	@Override
	public void documentAboutToBeChanged(DocumentEvent event) {
		// only the text after the change matters
	}

	@Override
	public void documentChanged(DocumentEvent event) {
		later();
	}

	private void later() {
		UiThread.after(PAUSE_MILLIS, ask);
	}

	private void ask() {
		IDocument document = viewer == null ? null : viewer.getDocument();
		if (document == null) {
			return;
		}
		LanguageService service = LanguageService.get();
		service.identifier(document).ifPresent(file -> {
			String text = document.get();
			service.ask(server -> server.getTextDocumentService().semanticTokensFull(new SemanticTokensParams(file)))
					.thenAccept(tokens -> {
						if (tokens != null) {
							take(kinds(text, tokens.getData()));
						}
					});
		});
	}

	private void take(Map<String, Kind> fresh) {
		if (!fresh.equals(kinds)) {
			kinds = fresh;
			changed.run();
		}
	}

	private static Map<String, Kind> kinds(String text, List<Integer> numbers) {
		Map<String, Kind> kinds = new HashMap<>();
		int lineStart = 0;
		int letter = 0;
		for (int at = 0; at < numbers.size(); at += NameTokens.NUMBERS) {
			int lines = numbers.get(at);
			for (int line = 0; line < lines; line++) {
				lineStart = text.indexOf('\n', lineStart) + 1;
			}
			letter = numbers.get(at + 1) + (lines == 0 ? letter : 0);
			Kind kind = switch (numbers.get(at + 3)) {
				case NameTokens.FROM_CATALOG -> Kind.PART;
				case NameTokens.OPTION -> Kind.OPTION;
				default -> Kind.OTHER;
			};
			int start = lineStart + letter;
			int end = start + numbers.get(at + 2);
			if (kind != Kind.OTHER && end <= text.length()) {
				kinds.putIfAbsent(text.substring(start, end), kind);
			}
		}
		return kinds;
	}
}
