/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.rulepage;

import java.util.Arrays;
import java.util.List;

/**
 * A table as text whose columns stand below each other in a font of equal widths.
 */
final class TableText {

	private static final String BETWEEN = "   ";

	private TableText() {
	}

	/** The lines of a table, a rule below the first. */
	static String of(List<List<String>> rows) {
		int columns = rows.stream().mapToInt(List::size).max().orElse(0);
		int[] widths = new int[columns];
		rows.forEach(row -> {
			for (int at = 0; at < row.size(); at++) {
				widths[at] = Math.max(widths[at], row.get(at).length());
			}
		});
		StringBuilder text = new StringBuilder();
		for (int at = 0; at < rows.size(); at++) {
			text.append(at == 0 ? "" : "\n").append(line(rows.get(at), widths));
			if (at == 0) {
				text.append('\n').append("\u2500".repeat(Math.max(1, Arrays.stream(widths).sum() + BETWEEN.length() * (columns - 1))));
			}
		}
		return text.toString();
	}

	private static String line(List<String> row, int[] widths) {
		StringBuilder line = new StringBuilder();
		for (int at = 0; at < row.size(); at++) {
			line.append(at == 0 ? "" : BETWEEN).append(row.get(at)).append(" ".repeat(widths[at] - row.get(at).length()));
		}
		return line.toString().stripTrailing();
	}
}
