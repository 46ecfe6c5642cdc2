/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/**
 * What is on the screen from the start until the window is there. The platform's own needs a native launcher.
 */
final class Splash {

	private static Splash shown;

	private final Shell shell;

	private Splash(Shell shell) {
		this.shell = shell;
	}

	/** Shows it in the middle of the first screen. */
	static void show(Display display) {
		Shell shell = new Shell(display, SWT.NO_TRIM | SWT.TOOL);
		shell.setText("Hullwright");
		shell.setBackgroundMode(SWT.INHERIT_FORCE);
		shell.setBackground(display.getSystemColor(SWT.COLOR_LIST_BACKGROUND));
		GridLayoutFactory.fillDefaults().numColumns(2).margins(28, 24).spacing(24, 4).applyTo(shell);
		ResourceLocator.imageDescriptorFromBundle("hullwright.workbench", "icons/hullwright-128.png").ifPresent(descriptor -> {
			Image image = descriptor.createImage(display);
			Label picture = new Label(shell, SWT.NONE);
			picture.setImage(image);
			picture.addDisposeListener(event -> image.dispose());
			GridDataFactory.fillDefaults().span(1, 3).applyTo(picture);
		});
		Label name = line(shell, "Hullwright " + version(), SWT.COLOR_LIST_FOREGROUND, SWT.END);
		FontData[] large = name.getFont().getFontData();
		large[0].setHeight(large[0].getHeight() * 2);
		Font font = new Font(display, large);
		name.setFont(font);
		name.addDisposeListener(event -> font.dispose());
		line(shell, "Checks the data networks of boats while they are being designed.", SWT.COLOR_LIST_FOREGROUND, SWT.CENTER);
		line(shell, "Starting\u2026", SWT.COLOR_WIDGET_DISABLED_FOREGROUND, SWT.BEGINNING);
		shell.pack();
		Rectangle screen = display.getPrimaryMonitor().getBounds();
		shell.setLocation(screen.x + (screen.width - shell.getSize().x) / 2, screen.y + (screen.height - shell.getSize().y) / 2);
		shell.open();
		while (display.readAndDispatch()) {
			// until it is painted: from here on the start keeps the thread busy
		}
		shown = new Splash(shell);
	}

	private static Label line(Shell shell, String text, int colour, int align) {
		Label line = new Label(shell, SWT.NONE);
		line.setText(text);
		line.setForeground(shell.getDisplay().getSystemColor(colour));
		GridDataFactory.fillDefaults().grab(true, true).align(SWT.BEGINNING, align).applyTo(line);
		return line;
	}

	private static String version() {
		var version = Platform.getBundle("hullwright.workbench").getVersion();
		return version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
	}

	/** Takes it away, if it is still there. */
	static void hide() {
		if (shown != null && !shown.shell.isDisposed()) {
			shown.shell.dispose();
		}
		shown = null;
	}
}
