/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Receives what the server finds. An open editor shows it at once; the Findings view shows it for the text that is saved.
 */
final class Findings implements LanguageClient {

	private static final ILog LOG = ILog.of(Findings.class);

	private final LanguageService service;
	private final OpenDocuments documents;
	private final Map<Path, List<Diagnostic>> latest = new ConcurrentHashMap<>();
	/** The files and folders whose findings are not in the list yet. */
	private final Set<Path> waiting = ConcurrentHashMap.newKeySet();

	Findings(LanguageService service, OpenDocuments documents) {
		this.service = service;
		this.documents = documents;
	}

	/** The latest findings of a file, of its text as it was edited. */
	List<Diagnostic> of(Path file) {
		return latest.getOrDefault(file, List.of());
	}

	/** The latest finding that a marker stands for, if it is still there. */
	Optional<Diagnostic> of(IMarker marker) {
		return FileUris.path(marker.getResource()).map(this::of).orElse(List.of()).stream()
				.filter(diagnostic -> FindingMarkers.stands(marker, diagnostic)).findFirst();
	}

	@Override
	public void publishDiagnostics(PublishDiagnosticsParams params) {
		Path path = FileUris.path(params.getUri()).orElse(null);
		if (path == null) {
			return;
		}
		List<Diagnostic> diagnostics = List.copyOf(params.getDiagnostics());
		latest.put(path, diagnostics);
		Optional<OpenDocument> document = documents.at(path);
		document.ifPresent(open -> UiThread.later(() -> show(open, params.getVersion(), diagnostics)));
		waiting.add(path);
		listWhatCanBe();
	}

	/**
	 * The list is about saved text. Below a folder any file may be the one whose unsaved text something is about, so what is about
	 * the folder waits until all are saved.
	 */
	private void listWhatCanBe() {
		for (Path path : waiting) {
			if (!documents.anyUnsavedIn(path) && waiting.remove(path)) {
				FileUris.resource(path).ifPresent(resource -> new FindingMarkers(resource, of(path)).schedule());
			}
		}
	}

	private void show(OpenDocument open, Integer version, List<Diagnostic> diagnostics) {
		boolean closed = open.document() == null;
		if (!closed && (version == null || version == open.version())
				&& open.buffer().getAnnotationModel() instanceof FindingAnnotationModel model) {
			model.show(service, open.path(), open.document(), diagnostics);
		}
	}

	void tell(String message) {
		showMessage(new MessageParams(MessageType.Error, message));
	}

	@Override
	public void showMessage(MessageParams message) {
		boolean error = message.getType() == MessageType.Error;
		IStatus status = new Status(error ? IStatus.ERROR : IStatus.INFO, "hullwright.workbench", message.getMessage());
		UiThread.later(() -> StatusManager.getManager().handle(status, error ? StatusManager.SHOW | StatusManager.LOG : StatusManager.LOG));
	}

	@Override
	public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
		showMessage(request);
		return CompletableFuture.completedFuture(null);
	}

	@Override
	public void logMessage(MessageParams message) {
		LOG.info(message.getMessage());
	}

	@Override
	public void telemetryEvent(Object object) {
		// nothing is collected
	}
}
