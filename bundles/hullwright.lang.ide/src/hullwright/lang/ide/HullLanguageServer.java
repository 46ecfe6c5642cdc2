/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.check.plugin.TrustedPlugins;
import hullwright.lang.ide.completion.OfferedItems;
import hullwright.lang.ide.names.NameRequests;
import hullwright.lang.ide.names.NameTokens;
import hullwright.lang.ide.names.Outcome;
import hullwright.lang.ide.names.ProjectTexts;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import org.eclipse.emf.common.util.URI;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.PrepareRenameDefaultBehavior;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameOptions;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SemanticTokensWithRegistrationOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.xtext.ide.server.LanguageServerImpl;
import org.eclipse.xtext.ide.server.UriExtensions;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.service.OperationCanceledError;
import org.eclipse.xtext.util.CancelIndicator;

/**
 * Xtext's server for names, completion and symbols; the findings come from our own check, which sees the whole project.
 */
public class HullLanguageServer extends LanguageServerImpl {

	private static final Path BUILT_IN_TEXTS = TrustedPlugins.ofUser().file().resolveSibling("standard");

	private final LiveCheck check = new LiveCheck();
	private volatile boolean clientFillsIn;

	/** The boat in view. */
	LiveBoats boats() {
		return check.boats();
	}

	/** Brings the series of a file into view. */
	void show(Path file) {
		check.show(file);
	}

	@Override
	public void connect(LanguageClient client) {
		check.connect(client);
		super.connect(withoutDiagnostics(client));
	}

	/** One publisher per file: what Xtext's own validation publishes is dropped, since the check finds the same and more. */
	private static LanguageClient withoutDiagnostics(LanguageClient client) {
		return (LanguageClient) Proxy.newProxyInstance(HullLanguageServer.class.getClassLoader(), new Class<?>[] { LanguageClient.class },
				(proxy, method, arguments) -> {
					if ("publishDiagnostics".equals(method.getName())) {
						return null;
					}
					try {
						return method.invoke(client, arguments);
					} catch (InvocationTargetException e) {
						throw e.getCause();
					}
				});
	}

	@Override
	protected ServerCapabilities createServerCapabilities(InitializeParams params) {
		ServerCapabilities capabilities = super.createServerCapabilities(params);
		clientFillsIn = OfferedItems.fillsIn(params);
		capabilities.setRenameProvider(new RenameOptions(true));
		capabilities.setCodeActionProvider(new CodeActionOptions(List.of(CodeActionKind.QuickFix)));
		capabilities.setSemanticTokensProvider(new SemanticTokensWithRegistrationOptions(NameTokens.LEGEND, true));
		List<WorkspaceFolder> folders = params.getWorkspaceFolders();
		check.foldersChanged(folders == null ? List.of() : folders, List.of());
		return capabilities;
	}

	@Override
	public void didChangeWorkspaceFolders(DidChangeWorkspaceFoldersParams params) {
		super.didChangeWorkspaceFolders(params);
		check.foldersChanged(params.getEvent().getAdded(), params.getEvent().getRemoved());
	}

	@Override
	public void didOpen(DidOpenTextDocumentParams params) {
		super.didOpen(params);
		TextDocumentItem document = params.getTextDocument();
		check.opened(document.getUri(), document.getVersion(), document.getText());
	}

	@Override
	public void didChange(DidChangeTextDocumentParams params) {
		super.didChange(params);
		VersionedTextDocumentIdentifier document = params.getTextDocument();
		check.changed(document.getUri(), document.getVersion(), params.getContentChanges());
	}

	@Override
	public void didSave(DidSaveTextDocumentParams params) {
		super.didSave(params);
		check.saved(params.getTextDocument().getUri());
	}

	@Override
	public void didClose(DidCloseTextDocumentParams params) {
		super.didClose(params);
		check.closed(params.getTextDocument().getUri());
	}

	@Override
	public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
		super.didChangeWatchedFiles(params);
		check.filesChanged(params.getChanges().stream().map(FileEvent::getUri).toList());
	}

	@Override
	public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
		List<Diagnostic> diagnostics = List.copyOf(params.getContext().getDiagnostics());
		return check.fixes(diagnostics).thenApply(fixes -> {
			List<Either<Command, CodeAction>> actions = new ArrayList<>();
			fixes.forEach(fix -> actions.add(Either.forRight(fix)));
			return actions;
		});
	}

	@Override
	protected Either<List<CompletionItem>, CompletionList> completion(CancelIndicator canceled, CompletionParams params) {
		Either<List<CompletionItem>, CompletionList> offered = super.completion(canceled, params);
		OfferedItems.fit(offered.map(items -> items, CompletionList::getItems), clientFillsIn);
		return offered;
	}

	/** The one layout, as far as it lies within the range: a piece is laid out as it is in the whole. */
	@Override
	protected List<? extends TextEdit> rangeFormatting(DocumentRangeFormattingParams params, CancelIndicator canceled) {
		Range range = params.getRange();
		return formatting(new DocumentFormattingParams(params.getTextDocument(), params.getOptions()), canceled).stream()
				.filter(edit -> edit.getRange().getEnd().getLine() >= range.getStart().getLine() && edit.getRange().getStart().getLine() <= range.getEnd().getLine())
				.toList();
	}

	/** The declaration, and below it the rules behind what was found there, and what the boat in view is like. */
	@Override
	protected Hover hover(HoverParams params, CancelIndicator canceled) {
		Hover declaration = super.hover(params, canceled);
		URI uri = getURI(params);
		Optional<Path> file = Places.path(params.getTextDocument().getUri());
		int offset = getWorkspaceManager().doRead(uri, (document, resource) -> document == null ? -1 : document.getOffSet(params.getPosition()));
		if (check.boats().current().isEmpty()) {
			// no window says which boat is in view, so it is the one of the text that is looked at
			file.ifPresent(check::show);
		}
		List<String> lines = check.boats().current().filter(boat -> file.isPresent())
				.map(boat -> BoatHover.at(boat, file.get(), offset)).orElse(List.of());
		List<String> rules = file.map(path -> check.rulesAt(path, offset)).orElse(List.of());
		return HoverText.with(HoverText.with(declaration, rules), lines);
	}

	@Override
	public CompletableFuture<SemanticTokens> semanticTokensFull(SemanticTokensParams params) {
		return getRequestManager().runRead(canceled -> getWorkspaceManager().doRead(getURI(params.getTextDocument()), (document, resource) -> {
			IParseResult read = resource == null ? null : resource.getParseResult();
			if (document == null || read == null) {
				return new SemanticTokens(List.of());
			} else if (!read.getRootNode().getText().equals(document.getContents())) {
				// a further change has come, and its own question comes after it
				throw new OperationCanceledError(new CancellationException());
			}
			return new SemanticTokens(NameTokens.of(read, document));
		}));
	}

	private NameRequests names(CancelIndicator canceled) {
		return new NameRequests(new ProjectTexts(getWorkspaceManager(), canceled::isCanceled), new UriExtensions(), BUILT_IN_TEXTS);
	}

	@Override
	protected List<? extends Location> definition(CancelIndicator canceled, DefinitionParams params) {
		return names(canceled).definition(getURI(params), params.getPosition());
	}

	@Override
	protected List<? extends Location> references(ReferenceParams params, CancelIndicator canceled) {
		return names(canceled).references(getURI(params), params.getPosition(), params.getContext().isIncludeDeclaration());
	}

	@Override
	protected List<? extends DocumentHighlight> documentHighlight(DocumentHighlightParams params, CancelIndicator canceled) {
		return names(canceled).highlights(getURI(params), params.getPosition());
	}

	@Override
	public CompletableFuture<Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>> prepareRename(PrepareRenameParams params) {
		return getRequestManager().runRead(canceled -> names(canceled).prepareRename(getURI(params), params.getPosition()))
				.thenApply(outcome -> Either3.forSecond(outcome.orRefusal()));
	}

	@Override
	public CompletableFuture<WorkspaceEdit> rename(RenameParams params) {
		return getRequestManager().runRead(canceled -> names(canceled).rename(getURI(params.getTextDocument()), params.getPosition(), params.getNewName(),
				warning -> getLanguageClient().showMessage(new MessageParams(MessageType.Warning, warning)))).thenApply(Outcome::orRefusal);
	}

	@Override
	public CompletableFuture<Object> shutdown() {
		check.close();
		return super.shutdown();
	}
}
