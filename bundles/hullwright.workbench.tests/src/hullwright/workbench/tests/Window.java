/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;

/**
 * The window under test, for test methods that run beside the UI thread.
 */
final class Window {

	/** Far longer than anything takes, so that a slow machine fails no test. */
	private static final Duration PATIENCE = Duration.ofSeconds(60);

	private Window() {
	}

	/** Does something in the UI thread, waits for it, and hands on what it throws. */
	static <T> T ui(Callable<T> action) {
		AtomicReference<T> result = new AtomicReference<>();
		AtomicReference<Throwable> failure = new AtomicReference<>();
		Display display = PlatformUI.getWorkbench().getDisplay();
		display.syncExec(() -> {
			try {
				result.set(action.call());
			} catch (Exception | AssertionError e) {
				failure.set(e);
			}
		});
		if (failure.get() != null) {
			throw new AssertionError(failure.get().getMessage(), failure.get());
		}
		return result.get();
	}

	/** Waits until something in the window is as expected. */
	static <T> T until(String expectation, Callable<T> look, Predicate<T> expected) {
		long end = System.nanoTime() + PATIENCE.toNanos();
		T seen;
		do {
			seen = ui(look);
			if (expected.test(seen)) {
				return seen;
			}
			pause();
		} while (System.nanoTime() < end);
		return fail("Expected: " + expectation + ". Seen until the end: " + seen);
	}

	private static void pause() {
		try {
			Thread.sleep(50);
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			fail("The test was interrupted.");
		}
	}

	/** The page of the window. To be called in the UI thread. */
	static IWorkbenchPage page() {
		IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
		assertNotNull(page, "the window has a page");
		return page;
	}

	/** All controls of a kind below another one. To be called in the UI thread. */
	static <C extends Control> List<C> below(Composite parent, Class<C> kind) {
		List<C> found = new ArrayList<>();
		for (Control child : parent.getChildren()) {
			if (kind.isInstance(child)) {
				found.add(kind.cast(child));
			}
			if (child instanceof Composite composite) {
				found.addAll(below(composite, kind));
			}
		}
		return found;
	}
}
