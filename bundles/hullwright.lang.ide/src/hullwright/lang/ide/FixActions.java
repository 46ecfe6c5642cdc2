/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.check.Checker;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.FixProposal;
import hullwright.rules.edit.TextChange;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.SnippetTextEdit;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * Works out how findings can be mended, on a thread of its own: each way is tried before it is offered, which takes a while.
 */
final class FixActions {

	private static final Pattern REFERENCE = Pattern.compile("(\\d+):(\\d+)");

	private final Checker checker;
	private final Map<Path, OpenDocument> open;
	private final Map<Path, CheckedProject> latest = new ConcurrentHashMap<>();
	/** What was found on the boat in view while all others were still under way. */
	private final Map<Path, CheckedProject> soFar = new ConcurrentHashMap<>();
	private final ExecutorService background = Executors.newSingleThreadExecutor(task -> {
		Thread thread = new Thread(task, "Hullwright fixes");
		thread.setDaemon(true);
		return thread;
	});

	FixActions(Checker checker, Map<Path, OpenDocument> open) {
		this.checker = checker;
		this.open = open;
	}

	void update(CheckedProject project) {
		(project.soFar() ? soFar : latest).put(project.folder(), project);
	}

	/** The latest complete check of a project, if there was one. */
	Optional<CheckedProject> latest(Path folder) {
		return Optional.ofNullable(latest.get(folder));
	}

	void forget(Path folder) {
		latest.remove(folder);
		soFar.remove(folder);
	}

	void close() {
		background.shutdownNow();
	}

	/** Fixes for diagnostics of the latest check. Those of an earlier check get none: their places are no longer right. */
	CompletableFuture<List<CodeAction>> of(List<Diagnostic> diagnostics) {
		return CompletableFuture.supplyAsync(() -> {
			List<CodeAction> actions = new ArrayList<>();
			diagnostics.forEach(diagnostic -> actions.addAll(of(diagnostic)));
			return actions;
		}, background);
	}

	private List<CodeAction> of(Diagnostic diagnostic) {
		Matcher reference = REFERENCE.matcher(String.valueOf(diagnostic.getData()));
		if (!reference.find()) {
			return List.of();
		}
		long number = Long.parseLong(reference.group(1));
		int index = Integer.parseInt(reference.group(2));
		Optional<CheckedProject> project = Stream.concat(latest.values().stream(), soFar.values().stream()).filter(candidate -> candidate.number() == number).findAny();
		if (project.isEmpty() || index >= project.get().report().findings().size()) {
			return List.of();
		}
		List<CodeAction> actions = new ArrayList<>();
		for (FixProposal proposal : checker.proposals(project.get().request(), project.get().report().findings().get(index))) {
			edit(project.get(), proposal).ifPresent(edit -> actions.add(action(diagnostic, proposal, edit)));
		}
		return actions;
	}

	private static CodeAction action(Diagnostic diagnostic, FixProposal proposal, WorkspaceEdit edit) {
		CodeAction action = new CodeAction(proposal.title());
		action.setKind(CodeActionKind.QuickFix);
		action.setDiagnostics(List.of(diagnostic));
		action.setIsPreferred(proposal.reach() == Fix.Reach.SAFE);
		action.setEdit(edit);
		return action;
	}

	/** The edit of a fix, or nothing when an editor shows another text than the one that was checked. */
	private Optional<WorkspaceEdit> edit(CheckedProject project, FixProposal proposal) {
		Map<String, List<Either<TextEdit, SnippetTextEdit>>> edits = new LinkedHashMap<>();
		for (TextChange change : proposal.changes()) {
			String text = project.request().snapshot().text(change.file()).orElse("");
			edits.computeIfAbsent(change.file(), key -> new ArrayList<>())
					.add(Either.forLeft(new TextEdit(Places.range(text, change.offset(), change.length()), change.replacement())));
		}
		WorkspaceEdit whole = new WorkspaceEdit(new ArrayList<>());
		for (Map.Entry<String, List<Either<TextEdit, SnippetTextEdit>>> entry : edits.entrySet()) {
			Path path = project.folder().resolve(entry.getKey());
			OpenDocument document = open.get(path);
			if (document != null && !document.text().equals(project.request().snapshot().text(entry.getKey()).orElse(null))) {
				return Optional.empty();
			}
			VersionedTextDocumentIdentifier target = document == null
					? new VersionedTextDocumentIdentifier(Places.uri(path), null)
					: new VersionedTextDocumentIdentifier(document.uri(), document.version());
			whole.getDocumentChanges().add(Either.forLeft(new TextDocumentEdit(target, entry.getValue())));
		}
		return Optional.of(whole);
	}
}
