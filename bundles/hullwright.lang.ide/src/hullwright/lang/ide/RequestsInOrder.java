/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import com.google.inject.Inject;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import org.eclipse.xtext.ide.server.concurrent.RequestManager;
import org.eclipse.xtext.service.OperationCanceledManager;

/**
 * Answers questions one after another: names are linked when they are first asked for, and two questions at a time would clash.
 * A change is taken in even if what came before it failed, such as a file that has just been deleted.
 */
final class RequestsInOrder extends RequestManager {

	@Inject
	RequestsInOrder(OperationCanceledManager cancellation) {
		super(Executors.newSingleThreadExecutor(task -> {
			Thread thread = new Thread(task, "Hullwright answers");
			thread.setDaemon(true);
			return thread;
		}), cancellation);
	}

	@Override
	protected CompletableFuture<Void> cancel() {
		return super.cancel().exceptionally(failure -> null);
	}
}
