/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/**
 * Where other threads hand in what only the UI thread may do.
 */
public final class UiThread {

	private UiThread() {
	}

	/** Has it done soon; without a window, as while it closes, it is left. May be called by any thread. */
	public static void later(Runnable task) {
		if (PlatformUI.isWorkbenchRunning()) {
			Display display = PlatformUI.getWorkbench().getDisplay();
			if (!display.isDisposed()) {
				display.asyncExec(task);
			}
		}
	}

	/** Has it done after a pause, which begins anew when the same task is handed in again. May be called by any thread. */
	public static void after(int millis, Runnable task) {
		later(() -> Display.getCurrent().timerExec(millis, task));
	}
}
