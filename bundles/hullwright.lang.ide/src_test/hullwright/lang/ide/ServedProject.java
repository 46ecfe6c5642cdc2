/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DocumentSymbolCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;

/**
 * A project on the disk with a server that speaks to no stream, and places in its texts found by what stands there.
 */
final class ServedProject implements AutoCloseable {

	final RecordingClient client = new RecordingClient();
	final LanguageServer server;
	private final Path folder;
	private final Map<String, String> texts = new HashMap<>();

	/** Writes the texts, by file name, and starts a server on them. */
	ServedProject(Path folder, Map<String, String> files) throws Exception {
		this.folder = folder.toRealPath();
		for (Map.Entry<String, String> each : files.entrySet()) {
			Files.writeString(folder.resolve(each.getKey()), each.getValue());
		}
		texts.putAll(files);
		server = start(HullServer.create());
	}

	private <S extends LanguageServer & LanguageClientAware> LanguageServer start(S fresh) throws Exception {
		fresh.connect(client);
		fresh.initialize(parameters(folder)).get(60, TimeUnit.SECONDS);
		fresh.initialized(new InitializedParams());
		return fresh;
	}

	/** What a client says first. */
	static InitializeParams parameters(Path folder) {
		InitializeParams params = new InitializeParams();
		params.setWorkspaceFolders(List.of(new WorkspaceFolder(Places.uri(folder), "test")));
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
		DocumentSymbolCapabilities symbols = new DocumentSymbolCapabilities();
		symbols.setHierarchicalDocumentSymbolSupport(true);
		text.setDocumentSymbol(symbols);
		params.setCapabilities(new ClientCapabilities(workspace, text, null));
		return params;
	}

	/** Opens a file in the editor, with a text that may differ from the disk's. */
	void open(String file, String text) {
		texts.put(file, text);
		server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri(file), "hull", 1, text)));
	}

	String uri(String file) {
		return Places.uri(folder.resolve(file));
	}

	TextDocumentIdentifier identifier(String file) {
		return new TextDocumentIdentifier(uri(file));
	}

	String text(String file) {
		return texts.get(file);
	}

	/** The place of the bar in a piece of text that occurs once: {@code "tee b|low : tee1"}. */
	Position at(String file, String marked) {
		String piece = marked.replace("|", "");
		String text = texts.get(file);
		int start = text.indexOf(piece);
		assertTrue(start >= 0, file + " contains: " + piece);
		assertTrue(text.indexOf(piece, start + 1) < 0, file + " contains only once: " + piece);
		return Places.range(text, start + marked.indexOf('|'), 0).getStart();
	}

	/** An offset of a position. */
	static int offset(String text, Position position) {
		int line = 0;
		for (int left = position.getLine(); left > 0; left--) {
			line = text.indexOf('\n', line) + 1;
		}
		return line + position.getCharacter();
	}

	/** The texts that an edit changes, by file name. */
	Map<String, String> applied(WorkspaceEdit edit) {
		Map<String, String> changed = new TreeMap<>();
		edit.getDocumentChanges().forEach(change -> {
			String file = Path.of(java.net.URI.create(change.getLeft().getTextDocument().getUri())).getFileName().toString();
			changed.put(file, applied(texts.get(file), change.getLeft().getEdits().stream().map(each -> each.getLeft()).toList()));
		});
		return changed;
	}

	/** A text with edits made. */
	static String applied(String text, List<? extends TextEdit> edits) {
		StringBuilder result = new StringBuilder(text);
		List<TextEdit> fromTheEnd = new ArrayList<>(edits);
		fromTheEnd.sort(Comparator.comparing((TextEdit edit) -> offset(text, edit.getRange().getStart())).reversed());
		fromTheEnd.forEach(edit -> result.replace(offset(text, edit.getRange().getStart()), offset(text, edit.getRange().getEnd()), edit.getNewText()));
		return result.toString();
	}

	/** The lines that differ, as they are afterwards, without what indents them. */
	static List<String> changedLines(String before, String after) {
		List<String> old = before.lines().toList();
		List<String> fresh = after.lines().toList();
		List<String> changed = new ArrayList<>();
		for (int line = 0; line < fresh.size(); line++) {
			if (line >= old.size() || !old.get(line).equals(fresh.get(line))) {
				changed.add(fresh.get(line).strip());
			}
		}
		return changed;
	}

	static <T> T answer(CompletableFuture<T> question) throws InterruptedException, ExecutionException, TimeoutException {
		return question.get(60, TimeUnit.SECONDS);
	}

	/** Files in the order of the text, for a project that is written down at once. */
	static Map<String, String> files(String... namesAndTexts) {
		Map<String, String> files = new LinkedHashMap<>();
		for (int at = 0; at < namesAndTexts.length; at += 2) {
			files.put(namesAndTexts[at], namesAndTexts[at + 1]);
		}
		return files;
	}

	@Override
	public void close() throws IOException {
		try {
			answer(server.shutdown());
		} catch (InterruptedException | ExecutionException | TimeoutException e) {
			throw new IOException("the server does not end", e);
		}
	}
}
