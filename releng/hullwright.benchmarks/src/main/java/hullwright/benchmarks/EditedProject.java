/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.check.WantedBoats;
import hullwright.lang.ide.HullServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;

/**
 * A generated project in the language server as the workbench runs it, with one file in an editor and its boat in view.
 */
final class EditedProject implements AutoCloseable {

	private final Listener listener = new Listener();
	private final Path folder;
	private final LanguageServer server;
	private final String uri;
	private final String text;
	private int version = 1;

	/** Writes the project and opens its first file. */
	EditedProject(int devices) throws Exception {
		folder = Files.createTempDirectory("edited").toRealPath();
		for (Map.Entry<String, String> each : GeneratedProject.of(devices).entrySet()) {
			Files.writeString(folder.resolve(each.getKey()), each.getValue());
		}
		Path file = folder.resolve(GeneratedProject.pathOf(0));
		server = start(HullServer.create(), listener, folder);
		HullServer.show(server, file);
		uri = file.toUri().toString();
		text = Files.readString(file);
		server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "hull", version, text)));
		listener.await(version);
	}

	/** The text of the file as it lies on the disk. */
	String text() {
		return text;
	}

	LanguageServer server() {
		return server;
	}

	TextDocumentIdentifier file() {
		return new TextDocumentIdentifier(uri);
	}

	/** Changes the text, and waits for its problems. */
	void change(TextDocumentContentChangeEvent change) throws InterruptedException {
		version++;
		server.getTextDocumentService().didChange(new DidChangeTextDocumentParams(new VersionedTextDocumentIdentifier(uri, version), List.of(change)));
		listener.await(version);
	}

	/** Brings another boat of the series into view. */
	void choose(String series, WantedBoats boat) {
		HullServer.boats(server).choose(series, boat);
	}

	private static <S extends LanguageServer & LanguageClientAware> LanguageServer start(S fresh, LanguageClient client, Path folder) throws Exception {
		fresh.connect(client);
		InitializeParams params = new InitializeParams();
		params.setWorkspaceFolders(List.of(new WorkspaceFolder(folder.toUri().toString(), "edited")));
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		params.setCapabilities(new ClientCapabilities(workspace, null, null));
		fresh.initialize(params).get();
		fresh.initialized(new InitializedParams());
		return fresh;
	}

	@Override
	public void close() throws Exception {
		server.shutdown().get(60, TimeUnit.SECONDS);
		delete();
	}

	private void delete() throws IOException {
		try (var files = Files.list(folder)) {
			for (Path file : files.toList()) {
				Files.delete(file);
			}
		}
		Files.delete(folder);
	}

	/** Waits for the problems of a version. */
	private static final class Listener implements LanguageClient {
		private final BlockingQueue<Integer> versions = new LinkedBlockingQueue<>();

		void await(int version) throws InterruptedException {
			Integer published;
			do {
				published = versions.poll(120, TimeUnit.SECONDS);
				if (published == null) {
					throw new IllegalStateException("no problems were published");
				}
			} while (published < version);
		}

		@Override
		public void publishDiagnostics(PublishDiagnosticsParams params) {
			if (params.getVersion() != null) {
				versions.add(params.getVersion());
			}
		}

		@Override
		public void telemetryEvent(Object event) {
			// nothing is collected
		}

		@Override
		public void showMessage(MessageParams message) {
			System.err.println(message.getMessage());
		}

		@Override
		public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
			return CompletableFuture.completedFuture(null);
		}

		@Override
		public void logMessage(MessageParams message) {
			// not of interest
		}
	}
}
