/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.lang.ide.EditorLanguage;
import hullwright.lang.ide.HullServer;
import hullwright.lang.ide.LiveBoats;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DocumentSymbolCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;

/**
 * The one language server of this workbench. Everything that is sent goes through one background thread, in order, so that no
 * caller ever waits and every question is answered about the text that was sent before it.
 */
public final class LanguageService {

	private static final ILog LOG = ILog.of(LanguageService.class);

	private static LanguageService running;

	private final ExecutorService outbound = Executors.newSingleThreadExecutor(task -> {
		Thread thread = new Thread(task, "Hullwright language service");
		thread.setDaemon(true);
		return thread;
	});
	private final OpenDocuments documents = new OpenDocuments(this);
	private final Findings findings = new Findings(this, documents);
	private final CompletableFuture<Set<String>> keywords;
	private LanguageServer server;

	private LanguageService() {
		// Without words the text is plain; why they are missing is told by the start of the server, which needs the same.
		keywords = CompletableFuture.supplyAsync(EditorLanguage::keywords, outbound).exceptionally(failure -> Set.of());
		outbound.execute(this::startServer);
	}

	/** The service; starts it, in the background, when it is not running. */
	public static synchronized LanguageService get() {
		if (running == null) {
			running = new LanguageService();
			running.documents.listen();
			ResourcesPlugin.getWorkspace().addResourceChangeListener(new WorkspaceChanges(running));
		}
		return running;
	}

	private void startServer() {
		try {
			server = start(HullServer.create());
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		} catch (ExecutionException | RuntimeException | LinkageError e) {
			LOG.error("The language service could not start.", e);
			findings.tell("Hullwright's language service could not start, so nothing is checked. The log has the details.");
		}
	}

	private <S extends LanguageServer & LanguageClientAware> LanguageServer start(S fresh) throws InterruptedException, ExecutionException {
		fresh.connect(findings);
		InitializeParams params = new InitializeParams();
		List<WorkspaceFolder> folders = new ArrayList<>();
		for (IProject project : ResourcesPlugin.getWorkspace().getRoot().getProjects()) {
			folder(project).ifPresent(folders::add);
		}
		params.setWorkspaceFolders(folders);
		params.setCapabilities(capabilities());
		fresh.initialize(params).get();
		fresh.initialized(new InitializedParams());
		return fresh;
	}

	private static ClientCapabilities capabilities() {
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
		DocumentSymbolCapabilities symbols = new DocumentSymbolCapabilities();
		symbols.setHierarchicalDocumentSymbolSupport(true);
		text.setDocumentSymbol(symbols);
		text.setCompletion(new CompletionCapabilities(new CompletionItemCapabilities(true)));
		return new ClientCapabilities(workspace, text, null);
	}

	/** The folder of an open project, as the server wants it. */
	static Optional<WorkspaceFolder> folder(IProject project) {
		return project.isOpen()
				? FileUris.path(project).map(path -> new WorkspaceFolder(FileUris.uri(path), project.getName()))
				: Optional.empty();
	}

	/** Tells the server something, later but in order. */
	void send(Consumer<LanguageServer> message) {
		outbound.execute(() -> {
			if (server != null) {
				try {
					message.accept(server);
				} catch (RuntimeException e) {
					LOG.error("The language service failed on a change; what is shown may be out of date.", e);
				}
			}
		});
	}

	/** Asks the server something about what was sent before. The answer is null when the server did not start. */
	public <T> CompletableFuture<T> ask(Function<LanguageServer, CompletableFuture<T>> question) {
		return CompletableFuture.supplyAsync(
				() -> server == null ? CompletableFuture.<T>completedFuture(null) : question.apply(server), outbound)
				.thenCompose(Function.identity());
	}

	/**
	 * Asks and waits, but no longer than given. A question that a change overtakes is asked again. Not to be called by the UI
	 * thread.
	 *
	 * @return the answer, or nothing when it is late or the server failed (which is logged)
	 */
	public <T> Optional<T> answer(Function<LanguageServer, CompletableFuture<T>> question, Duration patience) {
		long end = System.nanoTime() + patience.toNanos();
		while (System.nanoTime() < end) {
			CompletableFuture<T> asked = ask(question);
			try {
				return Optional.ofNullable(asked.get(Math.max(1, end - System.nanoTime()), TimeUnit.NANOSECONDS));
			} catch (CancellationException e) {
				// overtaken
			} catch (ExecutionException e) {
				if (!isCancellation(e)) {
					LOG.error("The language service could not answer.", e.getCause());
					return Optional.empty();
				}
			} catch (TimeoutException e) {
				asked.cancel(true);
			} catch (InterruptedException e) {
				asked.cancel(true);
				Thread.currentThread().interrupt();
				return Optional.empty();
			}
		}
		return Optional.empty();
	}

	static boolean isCancellation(Throwable failure) {
		for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
			if (cause instanceof CancellationException || cause instanceof OperationCanceledException) {
				return true;
			}
		}
		return false;
	}

	/**
	 * Looks whether an answer is there, waiting no longer than given, and leaves the question standing.
	 *
	 * @return the answer, or nothing as long as there is none
	 */
	public static <T> Optional<T> peek(CompletableFuture<T> answer, Duration patience) {
		try {
			return Optional.ofNullable(answer.get(patience.toMillis(), TimeUnit.MILLISECONDS));
		} catch (TimeoutException | CancellationException | ExecutionException e) {
			return Optional.empty();
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			return Optional.empty();
		}
	}

	/** The words of the language, once it is loaded. */
	public CompletableFuture<Set<String>> keywords() {
		return keywords;
	}

	/** What the server calls the file of this document, if it is one of ours. */
	public Optional<TextDocumentIdentifier> identifier(IDocument document) {
		return documents.of(document).map(open -> new TextDocumentIdentifier(open.uri()));
	}

	/** Ways to mend one finding, worked out in the background. What cannot be worked out is logged and is no way. */
	public CompletableFuture<List<CodeAction>> fixes(Path file, Diagnostic diagnostic) {
		CodeActionParams params = new CodeActionParams(new TextDocumentIdentifier(FileUris.uri(file)), diagnostic.getRange(),
				new CodeActionContext(List.of(diagnostic)));
		return ask(language -> language.getTextDocumentService().codeAction(params)).handle((actions, failure) -> {
			if (failure != null) {
				LOG.error("The fixes of a finding could not be worked out.", failure);
			}
			return actions == null ? List.of() : actions.stream().filter(Either::isRight).map(Either::getRight).toList();
		});
	}

	/** The boat in view, once the server runs; null when it did not start. */
	public CompletableFuture<LiveBoats> boats() {
		return CompletableFuture.supplyAsync(() -> server == null ? null : HullServer.boats(server), outbound);
	}

	/** Brings the series of a file into view, later but in order. */
	public void show(Path file) {
		send(language -> HullServer.show(language, file));
	}

	Findings findings() {
		return findings;
	}

	OpenDocuments documents() {
		return documents;
	}
}
