/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageServer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Findings and fixes for an editor in another process: everything goes through JSON.
 */
class ServedOverStreamsTest {

	private static final String RAFT = "series Raft \"Raft for tests\" revision \"A\" {\n\tplaces { helm }\n\tsupply bank { 12 }\n}\n";

	@TempDir
	private Path folder;

	private final RecordingClient client = new RecordingClient();
	private PipedOutputStream fromClient;
	private CompletableFuture<Boolean> served;
	private LanguageServer server;
	private String uri;

	@BeforeEach
	void connect() throws Exception {
		Files.writeString(folder.resolve("yard.hull"), "profile Bench from standard {\n}\n");
		uri = Places.uri(folder.toRealPath().resolve("raft.hull"));
		fromClient = new PipedOutputStream();
		PipedOutputStream fromServer = new PipedOutputStream();
		PipedInputStream toServer = new PipedInputStream(fromClient);
		PipedInputStream toClient = new PipedInputStream(fromServer);
		served = CompletableFuture.supplyAsync(() -> serve(toServer, fromServer));
		Launcher<LanguageServer> launcher = LSPLauncher.createClientLauncher(client, toClient, fromClient);
		launcher.startListening();
		server = launcher.getRemoteProxy();
		server.initialize(ServedProject.parameters(folder.toRealPath())).get(60, TimeUnit.SECONDS);
		server.initialized(new InitializedParams());
	}

	private List<Diagnostic> open(String text) throws Exception {
		server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "hull", 1, text)));
		return client.next(list -> list.getUri().equals(uri) && list.getVersion() != null).getDiagnostics();
	}

	@Test
	void aFindingComesThroughJsonAndItsFixBack() throws Exception {
		List<Diagnostic> found = open(RAFT);
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

	@Test
	void aNameIsChangedOrRefusedThroughJson() throws Exception {
		open(RAFT);
		Position helm = Places.range(RAFT, RAFT.indexOf("helm"), 0).getStart();
		WorkspaceEdit edit = server.getTextDocumentService().rename(new RenameParams(new TextDocumentIdentifier(uri), helm, "tiller"))
				.get(60, TimeUnit.SECONDS);
		TextEdit place = edit.getDocumentChanges().get(0).getLeft().getEdits().get(0).getLeft();
		assertEquals(RAFT.replace("helm", "tiller"), ServedProject.applied(RAFT, List.of(place)));
		ExecutionException refused = assertThrows(ExecutionException.class, () -> server.getTextDocumentService()
				.rename(new RenameParams(new TextDocumentIdentifier(uri), helm, "places")).get(60, TimeUnit.SECONDS));
		assertEquals("'places' is a word of the language and cannot be a name here", refused.getCause().getMessage());
		server.shutdown().get(60, TimeUnit.SECONDS);
		fromClient.close();
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
