/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolCapabilities;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The server as an editor sees it, on a plain class path. The boat is invented.
 */
class HullServerTest {

	private static final String BOAT = """
			import "standard:parts"

			series Dinghy "Dinghy for tests" revision "A" {
				places { helm "Helm" }
				supply battery { 12 V, lowest 11 V, highest 14.6 V; fuse 3 A; lead 2 m each way of 1.5 mm2 }
				network instruments of kind instrument bus {
					backbone of light {
						terminator left : endFemale at helm
						tap feed : midTap at helm from battery earths shield
						cable 1 m
						tee block : block4 at helm
						terminator right : endMale at helm
					}
					drop block.1 via 1 m of light to display : instrumentDisplay at helm
				}
				hull 1
			}
			""";

	@TempDir
	private Path folder;
	private LanguageServer server;
	private final RecordingClient client = new RecordingClient();
	private String uri;

	@BeforeEach
	void start() throws Exception {
		Files.writeString(folder.resolve("yard.hull"), "profile Bench from standard {\n}\n");
		Files.writeString(folder.resolve("dinghy.hull"), BOAT);
		uri = Places.uri(folder.toRealPath().resolve("dinghy.hull"));
		server = start(HullServer.create());
	}

	private <S extends LanguageServer & LanguageClientAware> LanguageServer start(S fresh) throws Exception {
		fresh.connect(client);
		InitializeParams params = new InitializeParams();
		params.setWorkspaceFolders(List.of(new WorkspaceFolder(Places.uri(folder.toRealPath()), "test")));
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
		DocumentSymbolCapabilities symbols = new DocumentSymbolCapabilities();
		symbols.setHierarchicalDocumentSymbolSupport(true);
		text.setDocumentSymbol(symbols);
		params.setCapabilities(new ClientCapabilities(workspace, text, null));
		fresh.initialize(params).get(60, TimeUnit.SECONDS);
		fresh.initialized(new InitializedParams());
		return fresh;
	}

	@AfterEach
	void stop() throws Exception {
		server.shutdown().get(60, TimeUnit.SECONDS);
	}

	private void open(String text) {
		server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "hull", 1, text)));
	}

	private void change(int version, TextDocumentContentChangeEvent change) {
		server.getTextDocumentService()
				.didChange(new DidChangeTextDocumentParams(new VersionedTextDocumentIdentifier(uri, version), List.of(change)));
	}

	private PublishDiagnosticsParams published(int version) throws InterruptedException {
		return client.next(list -> list.getUri().equals(uri) && list.getVersion() != null && list.getVersion() == version);
	}

	private static Position at(String text, String place) {
		return Places.range(text, text.indexOf(place), 0).getStart();
	}

	@Test
	void aGoodBoatHasAnEmptyList() throws Exception {
		open(BOAT);
		assertEquals(List.of(), RecordingClient.texts(published(1)));
	}

	@Test
	void aLengthWithoutUnitIsReportedInPlaceAndMended() throws Exception {
		open(BOAT);
		published(1);
		Position metre = at(BOAT, " m\n\t\t\ttee block");
		change(2, new TextDocumentContentChangeEvent(new Range(metre, new Position(metre.getLine(), metre.getCharacter() + 2)), ""));

		List<Diagnostic> found = published(2).getDiagnostics();
		assertEquals(1, found.size(), found.toString());
		Diagnostic missing = found.get(0);
		assertEquals("language/unit-missing", missing.getCode().getLeft());
		assertEquals("Hullwright", missing.getSource());
		assertEquals(DiagnosticSeverity.Error, missing.getSeverity());
		assertEquals(metre.getLine(), missing.getRange().getStart().getLine());
		assertTrue(HullServer.mayBeMended(missing));

		List<CodeAction> fixes = server.getTextDocumentService()
				.codeAction(new CodeActionParams(new TextDocumentIdentifier(uri), missing.getRange(), new CodeActionContext(found)))
				.get(60, TimeUnit.SECONDS).stream().map(either -> either.getRight()).toList();
		assertEquals(List.of("Write '1 m'"), fixes.stream().map(CodeAction::getTitle).toList());
		var document = fixes.get(0).getEdit().getDocumentChanges().get(0).getLeft();
		assertEquals(2, document.getTextDocument().getVersion());
		TextEdit edit = document.getEdits().get(0).getLeft();
		change(3, new TextDocumentContentChangeEvent(edit.getRange(), edit.getNewText()));
		assertEquals(List.of(), RecordingClient.texts(published(3)));
	}

	@Test
	void fixesAreForTheTextThatWasCheckedOnly() throws Exception {
		String bare = BOAT.replace("cable 1 m", "cable 1");
		open(bare);
		List<Diagnostic> old = published(1).getDiagnostics();
		change(2, new TextDocumentContentChangeEvent("// moved down a line\n" + bare));
		published(2);
		assertEquals(List.of(), server.getTextDocumentService()
				.codeAction(new CodeActionParams(new TextDocumentIdentifier(uri), old.get(0).getRange(), new CodeActionContext(old)))
				.get(60, TimeUnit.SECONDS));
	}

	@Test
	void aClosedDocumentCountsAsItIsOnTheDisk() throws Exception {
		open(BOAT.replace("cable 1 m", "cable 1"));
		assertEquals(1, published(1).getDiagnostics().size());
		server.getTextDocumentService().didClose(new DidCloseTextDocumentParams(new TextDocumentIdentifier(uri)));
		assertEquals(List.of(), RecordingClient.texts(client.next(list -> list.getUri().equals(uri) && list.getVersion() == null)));
	}

	@Test
	void completionKnowsTheCatalogs() throws Exception {
		open(BOAT);
		published(1);
		List<CompletionItem> items = server.getTextDocumentService()
				.completion(new CompletionParams(new TextDocumentIdentifier(uri), at(BOAT, "instrumentDisplay")))
				.get(60, TimeUnit.SECONDS).map(list -> list, list -> list.getItems());
		List<String> names = items.stream().map(CompletionItem::getLabel).toList();
		assertTrue(names.contains("depthTransducer"), "a device of the standard catalog: " + names);
		assertTrue(!names.contains("endFemale"), "a terminator is no device: " + names);
	}

	@Test
	void hoverShowsTheDeclaration() throws Exception {
		open(BOAT);
		published(1);
		Position inside = at(BOAT, "strumentDisplay");
		Hover hover = server.getTextDocumentService().hover(new HoverParams(new TextDocumentIdentifier(uri), inside)).get(60, TimeUnit.SECONDS);
		String shown = hover.getContents().getRight().getValue();
		assertTrue(shown.contains("device instrumentDisplay"), shown);
	}

	@Test
	void theOutlineUsesTheWordsOfTheText() throws Exception {
		open(BOAT);
		published(1);
		DocumentSymbol series = server.getTextDocumentService().documentSymbol(new DocumentSymbolParams(new TextDocumentIdentifier(uri)))
				.get(60, TimeUnit.SECONDS).get(0).getRight();
		assertEquals("Dinghy", series.getName());
		assertEquals("Dinghy for tests", series.getDetail());
		DocumentSymbol network = series.getChildren().stream().filter(child -> child.getName().equals("instruments")).findFirst().orElseThrow();
		assertTrue(network.getChildren().toString().contains("block4"), network.getChildren().toString());
		assertEquals(List.of(SymbolKind.Class, SymbolKind.Interface), List.of(series.getKind(), network.getKind()));
		DocumentSymbol hull = series.getChildren().stream().filter(child -> child.getKind() == SymbolKind.Constant).findFirst().orElseThrow();
		assertEquals("hull", hull.getDetail(), "a number alone would say nothing");
	}

	private List<? extends TextEdit> layout() throws Exception {
		// an editor's wish for blanks in place of tabs does not count
		return server.getTextDocumentService()
				.formatting(new DocumentFormattingParams(new TextDocumentIdentifier(uri), new FormattingOptions(2, true))).get(60, TimeUnit.SECONDS);
	}

	@Test
	void aTextIsLaidOutWhereItDiffersFromTheOneLayout() throws Exception {
		String text = BOAT.replace("\tcable 1 m", "  cable   1 m").replace("\tplaces {", "places\n{");
		open(text);
		published(1);
		List<? extends TextEdit> edits = layout();
		assertEquals(4, edits.size(), edits.toString());
		assertEquals(BOAT, applied(text, edits));
	}

	@Test
	void aTextThatIsLaidOutNeedsNoEdit() throws Exception {
		open(BOAT);
		published(1);
		assertEquals(List.of(), layout());
	}

	@Test
	void aTextThatIsNotUnderstoodIsNotLaidOut() throws Exception {
		open(BOAT.replace("\tcable 1 m", "  cable   1 m at"));
		published(1);
		assertEquals(List.of(), layout());
	}

	private static String applied(String text, List<? extends TextEdit> edits) {
		StringBuilder result = new StringBuilder(text);
		edits.stream().sorted(Comparator.comparing((TextEdit edit) -> offset(text, edit.getRange().getStart())).reversed())
				.forEach(edit -> result.replace(offset(text, edit.getRange().getStart()), offset(text, edit.getRange().getEnd()), edit.getNewText()));
		return result.toString();
	}

	private static int offset(String text, Position position) {
		int line = 0;
		for (int left = position.getLine(); left > 0; left--) {
			line = text.indexOf('\n', line) + 1;
		}
		return line + position.getCharacter();
	}
}
