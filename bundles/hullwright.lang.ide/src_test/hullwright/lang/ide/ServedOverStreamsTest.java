/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Findings and fixes for an editor in another process: everything goes through JSON.
 */
class ServedOverStreamsTest {

	private static final String RAFT = "series Raft \"Raft for tests\" revision \"A\" {\n\tplaces { helm }\n\tsupply bank { 12 }\n}\n";

	@TempDir
	private Path folder;

	@Test
	void aFindingComesThroughJsonAndItsFixBack() throws Exception {
		Files.writeString(folder.resolve("yard.hull"), "profile Bench from standard {\n}\n");
		String uri = Places.uri(folder.toRealPath().resolve("raft.hull"));
		PipedOutputStream fromClient = new PipedOutputStream();
		PipedOutputStream fromServer = new PipedOutputStream();
		PipedInputStream toServer = new PipedInputStream(fromClient);
		PipedInputStream toClient = new PipedInputStream(fromServer);
		CompletableFuture<Boolean> served = CompletableFuture.supplyAsync(() -> serve(toServer, fromServer));

		RecordingClient client = new RecordingClient();
		Launcher<LanguageServer> launcher = LSPLauncher.createClientLauncher(client, toClient, fromClient);
		launcher.startListening();
		LanguageServer server = launcher.getRemoteProxy();
		InitializeParams params = new InitializeParams();
		params.setWorkspaceFolders(List.of(new WorkspaceFolder(Places.uri(folder.toRealPath()), "test")));
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		params.setCapabilities(new ClientCapabilities(workspace, null, null));
		server.initialize(params).get(60, TimeUnit.SECONDS);
		server.initialized(new InitializedParams());
		server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "hull", 1, RAFT)));

		List<Diagnostic> found = client.next(list -> list.getUri().equals(uri) && list.getVersion() != null).getDiagnostics();
		assertEquals(List.of("language/unit-missing"), found.stream().map(each -> each.getCode().getLeft()).toList());
		List<String> fixes = server.getTextDocumentService()
				.codeAction(new CodeActionParams(new TextDocumentIdentifier(uri), found.get(0).getRange(), new CodeActionContext(found)))
				.get(60, TimeUnit.SECONDS).stream().map(action -> action.getRight().getTitle()).toList();
		assertEquals(List.of("Write '12 V'"), fixes);

		server.shutdown().get(60, TimeUnit.SECONDS);
		assertFalse(served.isDone(), "the client ends the session, not the server");
		fromClient.close();
		assertEquals(true, served.get(60, TimeUnit.SECONDS));
	}

	private static boolean serve(PipedInputStream in, PipedOutputStream out) {
		try {
			HullServer.serve(in, out);
			return true;
		} catch (Exception e) {
			throw new IllegalStateException(e);
		}
	}
}
