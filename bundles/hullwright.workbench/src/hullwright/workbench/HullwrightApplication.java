/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/**
 * Opens the window. Nothing here touches the workspace before its folder is chosen and locked.
 */
public final class HullwrightApplication implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		// the platform draws its icons with AWT, which need not look for a screen of its own for that
		System.setProperty("java.awt.headless", "true");
		Display.setAppName("Hullwright");
		Display display = PlatformUI.createDisplay();
		try {
			String refusal = WorkspaceFolder.open();
			if (refusal != null) {
				MessageDialog.openError(null, "Hullwright", refusal);
				return EXIT_OK;
			}
			Splash.show(display);
			int result = PlatformUI.createAndRunWorkbench(display, new Workbench());
			return result == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
		} finally {
			Splash.hide();
			display.dispose();
		}
	}

	@Override
	public void stop() {
		if (!PlatformUI.isWorkbenchRunning()) {
			return;
		}
		Display display = PlatformUI.getWorkbench().getDisplay();
		display.syncExec(() -> {
			if (!display.isDisposed()) {
				PlatformUI.getWorkbench().close();
			}
		});
	}
}
