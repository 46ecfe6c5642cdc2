/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.check.CheckObserver;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.plugin.TrustedPlugins;
import hullwright.rules.report.CheckReport;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.apache.log4j.Logger;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.xtext.ide.server.Document;

/**
 * Checks the project of whatever changed, a moment after the last change, and publishes one list per file.
 *
 * <p>Its state belongs to one background thread. Only the open documents change at once, with the caller, so that a check that
 * is under way can see that it has been overtaken.
 */
final class LiveCheck {

	private static final Logger LOG = Logger.getLogger(LiveCheck.class);

	/** Long enough for the next key of somebody who types, short enough to feel immediate. */
	private static final long PAUSE_MILLIS = 120;

	/** A check that takes longer tells how far it is. */
	private static final long LONG_NANOS = 250_000_000;

	private static final long BETWEEN_NANOS = 100_000_000;

	private final Checker checker = Checker.create(TrustedPlugins.ofUser());
	private final ProjectFolders folders = new ProjectFolders();
	private final Map<Path, OpenDocument> open = new ConcurrentHashMap<>();
	private final FixActions fixes = new FixActions(checker, open);
	private final LiveBoats boats = new LiveBoats(checker, project -> later(() -> scheduleProject(project, 0)));
	private final ScheduledThreadPoolExecutor background = new ScheduledThreadPoolExecutor(1, task -> {
		Thread thread = new Thread(task, "Hullwright check");
		thread.setDaemon(true);
		return thread;
	});
	private final Map<Path, ScheduledFuture<?>> pending = new HashMap<>();
	private final Map<Path, Set<Path>> published = new HashMap<>();
	private final Set<Path> failing = new HashSet<>();
	private long checks;
	private volatile LanguageClient client;

	void connect(LanguageClient client) {
		this.client = client;
	}

	void close() {
		background.shutdownNow();
		fixes.close();
	}

	CompletableFuture<List<CodeAction>> fixes(List<Diagnostic> diagnostics) {
		return fixes.of(diagnostics);
	}

	LiveBoats boats() {
		return boats;
	}

	/** What stands behind the findings at a place, of the text that was checked last. */
	List<String> rulesAt(Path file, int offset) {
		Path project = folders.of(file);
		return fixes.latest(project).map(checked -> RuleHover.at(checked, checker.rules(checked.request().snapshot()),
				project.relativize(file).toString().replace('\\', '/'), offset)).orElse(List.of());
	}

	void show(Path file) {
		later(() -> {
			Path project = folders.of(file);
			boats.show(project, project.relativize(file).toString().replace('\\', '/'));
		});
	}

	void foldersChanged(List<WorkspaceFolder> added, List<WorkspaceFolder> removed) {
		for (WorkspaceFolder folder : removed) {
			Places.path(folder.getUri()).ifPresent(path -> {
				folders.remove(path);
				later(() -> forget(path));
			});
		}
		for (WorkspaceFolder folder : added) {
			Places.path(folder.getUri()).ifPresent(path -> {
				folders.add(path);
				later(() -> scheduleBelow(path));
			});
		}
	}

	void opened(String uri, int version, String text) {
		Places.path(uri).ifPresent(path -> {
			open.put(path, new OpenDocument(uri, version, text));
			schedule(path, 0);
		});
	}

	void changed(String uri, int version, List<TextDocumentContentChangeEvent> edits) {
		Places.path(uri).ifPresent(path -> {
			open.computeIfPresent(path, (key, before) -> new OpenDocument(uri, version,
					new Document(before.version(), before.text()).applyTextDocumentChanges(edits).getContents()));
			schedule(path, PAUSE_MILLIS);
		});
	}

	void saved(String uri) {
		Places.path(uri).ifPresent(path -> schedule(path, 0));
	}

	void closed(String uri) {
		Places.path(uri).ifPresent(path -> {
			open.remove(path);
			schedule(path, 0);
		});
	}

	void filesChanged(List<String> uris) {
		for (String uri : uris) {
			Places.path(uri).ifPresent(path -> schedule(path, PAUSE_MILLIS));
		}
	}

	private void scheduleBelow(Path folder) {
		try {
			for (Path project : folders.below(folder)) {
				scheduleProject(project, 0);
			}
		} catch (IOException e) {
			tell("The folder " + folder + " cannot be read: " + e.getMessage());
		}
	}

	private void schedule(Path file, long delayMillis) {
		later(() -> scheduleProject(folders.of(file), delayMillis));
	}

	private void later(Runnable task) {
		try {
			background.execute(task);
		} catch (RejectedExecutionException e) {
			LOG.debug("The server is shut down; a late change is not checked.");
		}
	}

	private void scheduleProject(Path project, long delayMillis) {
		ScheduledFuture<?> earlier = pending.get(project);
		if (earlier != null) {
			earlier.cancel(false);
		}
		pending.put(project, background.schedule(() -> run(project), delayMillis, TimeUnit.MILLISECONDS));
	}

	private void run(Path project) {
		Map<Path, OpenDocument> seen = openIn(project);
		try {
			Snapshot snapshot = Snapshot.ofFolder(project);
			for (Map.Entry<Path, OpenDocument> document : seen.entrySet()) {
				snapshot = snapshot.with(project.relativize(document.getKey()).toString().replace('\\', '/'), document.getValue().text());
			}
			Optional<LiveBoats.Checked> inView = boats.update(project, snapshot, () -> !openIn(project).equals(seen));
			CheckRequest request = CheckRequest.ofAll(snapshot, LocalDate.now());
			CheckReport report = checker.check(request, new LookOn(project, seen, request, inView));
			CheckedProject checked = new CheckedProject(number(project, report), project, request, report, false);
			fixes.update(checked);
			publish(checked, seen);
			boats.checked(project, report);
			failing.remove(project);
		} catch (CancellationException e) {
			LOG.debug("A change came in between; its own check is on the way.");
		} catch (NoSuchFileException e) {
			forget(project);
		} catch (IOException e) {
			tellOnce(project, "The project " + project + " cannot be read: " + e.getMessage());
		} catch (RuntimeException e) {
			LOG.error("The check of " + project + " failed.", e);
			tellOnce(project, "The check of " + project.getFileName() + " failed inside Hullwright; what is shown may be out of date. "
					+ "The log has the details.");
		}
	}

	/**
	 * Looks on while all boats are checked. When that takes long, what is wrong on the boat in view is published first, and how many
	 * boats are done is told meanwhile.
	 */
	private final class LookOn implements CheckObserver {

		private final Path project;
		private final Map<Path, OpenDocument> seen;
		private final CheckRequest all;
		private final long begun = System.nanoTime();
		private Optional<LiveBoats.Checked> inView;
		private long told = begun;

		LookOn(Path project, Map<Path, OpenDocument> seen, CheckRequest all, Optional<LiveBoats.Checked> inView) {
			this.project = project;
			this.seen = seen;
			this.all = all;
			this.inView = inView;
		}

		@Override
		public boolean cancelled() {
			return !openIn(project).equals(seen);
		}

		@Override
		public void progress(int checked, int boatsInAll) {
			long now = System.nanoTime();
			if (now - begun > LONG_NANOS && now - told > BETWEEN_NANOS) {
				told = now;
				boats.progress(project, checked, boatsInAll);
				inView.ifPresent(this::publishSoFar);
				inView = Optional.empty();
			}
		}

		/** Of the file in view only: what the last check said of others is still the best that is known. */
		private void publishSoFar(LiveBoats.Checked boat) {
			CheckedProject soFar = new CheckedProject(++checks, project, all, boat.report(), true);
			fixes.update(soFar);
			Map<Path, List<Diagnostic>> diagnostics = soFar.diagnostics();
			boat.request().focus().stream().map(project::resolve)
					.forEach(file -> publish(file, diagnostics.getOrDefault(file, List.of()), seen.get(file)));
		}
	}

	/** What is found again as it was keeps its number, so that what somebody asks about it meanwhile can be answered. */
	private long number(Path project, CheckReport report) {
		return fixes.latest(project).filter(before -> before.report().findings().equals(report.findings())).map(CheckedProject::number)
				.orElseGet(() -> ++checks);
	}

	/** Not with every key: once, until the project can be checked again. */
	private void tellOnce(Path project, String message) {
		if (failing.add(project)) {
			tell(message);
		}
	}

	private Map<Path, OpenDocument> openIn(Path project) {
		Map<Path, OpenDocument> within = new HashMap<>();
		open.forEach((path, document) -> {
			if (path.startsWith(project) && folders.of(path).equals(project)) {
				within.put(path, document);
			}
		});
		return within;
	}

	private void publish(CheckedProject checked, Map<Path, OpenDocument> seen) {
		Map<Path, List<Diagnostic>> diagnostics = checked.diagnostics();
		Set<Path> files = new HashSet<>(diagnostics.keySet());
		files.addAll(seen.keySet());
		List<Path> all = new ArrayList<>(files);
		all.addAll(published.getOrDefault(checked.folder(), Set.of()));
		all.stream().distinct().sorted().forEach(file -> publish(file, diagnostics.getOrDefault(file, List.of()), seen.get(file)));
		published.put(checked.folder(), files);
	}

	/** A document that has changed since is left alone: its next check is on the way. */
	private void publish(Path file, List<Diagnostic> diagnostics, OpenDocument seen) {
		OpenDocument now = open.get(file);
		if (seen == null && now == null) {
			client.publishDiagnostics(new PublishDiagnosticsParams(Places.uri(file), diagnostics));
		} else if (seen != null && seen.equals(now)) {
			client.publishDiagnostics(new PublishDiagnosticsParams(now.uri(), diagnostics, now.version()));
		}
	}

	private void forget(Path folder) {
		Set<Path> projects = new HashSet<>(published.keySet());
		projects.removeIf(project -> !project.startsWith(folder));
		for (Path project : projects) {
			published.remove(project).forEach(file -> publish(file, List.of(), open.get(file)));
			fixes.forget(project);
		}
		boats.forget(folder);
	}

	private void tell(String message) {
		client.showMessage(new MessageParams(MessageType.Error, message));
	}
}
