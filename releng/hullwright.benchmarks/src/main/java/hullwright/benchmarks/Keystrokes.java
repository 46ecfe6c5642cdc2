/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import java.util.Arrays;
import java.util.Locale;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;

/**
 * From a keystroke to the problems of the file that it went into, in the server as the workbench runs it, with the boat in view. The
 * pause after which a check begins is part of what is measured and told apart. Arguments: how many keystrokes, then numbers of
 * devices.
 */
public final class Keystrokes {

	/** As {@code LiveCheck} waits. */
	private static final int PAUSE_MILLIS = 120;
	private static final int WARM_UP = 40;

	private Keystrokes() {
	}

	/** Prints one row of a table for each number of devices. */
	public static void main(String[] arguments) throws Exception {
		int keystrokes = Integer.parseInt(arguments[0]);
		for (String devices : Arrays.asList(arguments).subList(1, arguments.length)) {
			double[] millis = measure(Integer.parseInt(devices), keystrokes);
			Arrays.sort(millis);
			System.out.printf(Locale.ROOT, "| %s | %.0f | %.0f | %.0f | %.0f |%n", devices, at(millis, 0.5), at(millis, 0.95), at(millis, 0.5) - PAUSE_MILLIS,
					at(millis, 0.95) - PAUSE_MILLIS);
		}
		System.exit(0);
	}

	private static double at(double[] sorted, double share) {
		return sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
	}

	private static double[] measure(int devices, int keystrokes) throws Exception {
		try (EditedProject project = new EditedProject(devices)) {
			String text = project.text();
			int line = (int) text.substring(0, text.indexOf(" via 2 m of light")).lines().count() - 1;
			int column = text.lines().skip(line).findFirst().orElseThrow().indexOf("2 m of light");
			Range digit = new Range(new Position(line, column), new Position(line, column + 1));
			double[] millis = new double[keystrokes];
			for (int i = -WARM_UP; i < keystrokes; i++) {
				long begun = System.nanoTime();
				project.change(new TextDocumentContentChangeEvent(digit, i % 2 == 0 ? "1" : "2"));
				if (i >= 0) {
					millis[i] = (System.nanoTime() - begun) / 1e6;
				}
			}
			return millis;
		}
	}
}
