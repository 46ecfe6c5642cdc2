/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.services.LanguageServer;

/**
 * Something to ask the language server in a job, which may take as long as the person wants to wait.
 *
 * @param <T> the answer
 */
public final class Question<T> {

	private static final long LOOK_MILLIS = 50;

	private final Function<LanguageServer, CompletableFuture<T>> question;

	/** A question that is asked of the server. */
	public Question(Function<LanguageServer, CompletableFuture<T>> question) {
		this.question = question;
	}

	/**
	 * Asks, again if a change overtakes the question, and waits for the answer. Not to be called by the UI thread.
	 *
	 * @return the answer; null when the server did not start
	 * @throws CoreException              with the server's sentence when it refuses
	 * @throws OperationCanceledException when the monitor is cancelled
	 */
	public T ask(IProgressMonitor monitor) throws CoreException {
		while (true) {
			CompletableFuture<T> asked = LanguageService.get().ask(question);
			try {
				return wait(asked, monitor);
			} catch (CancellationException e) {
				// overtaken by a change
			} catch (ExecutionException e) {
				if (!LanguageService.isCancellation(e)) {
					throw new CoreException(Status.error(sentence(e), e.getCause()));
				}
			}
		}
	}

	private static <T> T wait(CompletableFuture<T> asked, IProgressMonitor monitor) throws ExecutionException {
		while (true) {
			try {
				return asked.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
			} catch (TimeoutException e) {
				if (monitor.isCanceled()) {
					asked.cancel(true);
					throw new OperationCanceledException();
				}
			} catch (InterruptedException e) {
				Thread.currentThread().interrupt();
				throw new OperationCanceledException();
			}
		}
	}

	private static String sentence(Throwable failure) {
		for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
			if (cause instanceof ResponseErrorException refused) {
				return refused.getResponseError().getMessage();
			}
		}
		return "The language service could not answer.";
	}
}
