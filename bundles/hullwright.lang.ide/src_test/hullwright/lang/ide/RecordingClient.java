/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.services.LanguageClient;

/**
 * An editor that keeps what the server tells it.
 */
final class RecordingClient implements LanguageClient {

	private static final long PATIENCE_SECONDS = 60;

	private final BlockingQueue<PublishDiagnosticsParams> published = new LinkedBlockingQueue<>();

	/** Waits for the list of a file that is as wanted, and passes over those before it. */
	PublishDiagnosticsParams next(Predicate<PublishDiagnosticsParams> wanted) throws InterruptedException {
		PublishDiagnosticsParams params = published.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
		while (params != null && !wanted.test(params)) {
			params = published.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
		}
		return params == null ? fail("The server published no such list.") : params;
	}

	static List<String> texts(PublishDiagnosticsParams params) {
		return params.getDiagnostics().stream().map(RecordingClient::text).toList();
	}

	static String text(Diagnostic diagnostic) {
		return diagnostic.getCode().getLeft() + " " + diagnostic.getRange().getStart().getLine() + ": " + diagnostic.getMessage().getLeft();
	}

	@Override
	public void publishDiagnostics(PublishDiagnosticsParams params) {
		published.add(params);
	}

	@Override
	public void telemetryEvent(Object event) {
		fail("nothing is collected");
	}

	@Override
	public void showMessage(MessageParams message) {
		published.add(new PublishDiagnosticsParams("message:" + message.getMessage(), List.of()));
	}

	@Override
	public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
		return CompletableFuture.completedFuture(null);
	}

	@Override
	public void logMessage(MessageParams message) {
		// not of interest here
	}
}
