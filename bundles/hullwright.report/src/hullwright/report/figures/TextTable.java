/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Rows of words and figures in aligned columns; figures stand at the right of their columns.
 */
final class TextTable {

	private final String[] heads;
	private final boolean[] right;
	private final List<String[]> rows = new ArrayList<>();

	/**
	 * A table without rows.
	 *
	 * @param heads what stands above the columns; one that begins with '>' is that of figures
	 */
	TextTable(String... heads) {
		right = new boolean[heads.length];
		this.heads = new String[heads.length];
		for (int i = 0; i < heads.length; i++) {
			right[i] = heads[i].startsWith(">");
			this.heads[i] = right[i] ? heads[i].substring(1) : heads[i];
		}
	}

	void row(String... cells) {
		if (cells.length != heads.length) {
			throw new IllegalArgumentException(heads.length + " cells are expected: " + Arrays.toString(cells));
		}
		rows.add(cells);
	}

	boolean isEmpty() {
		return rows.isEmpty();
	}

	/** How many rows it has. */
	int size() {
		return rows.size();
	}

	/** The lines of the table, columns without a single entry left out. */
	List<String> lines(String indent) {
		int[] widths = new int[heads.length];
		for (int column = 0; column < heads.length; column++) {
			int widest = 0;
			for (String[] row : rows) {
				widest = Math.max(widest, row[column].length());
			}
			widths[column] = widest == 0 ? 0 : Math.max(widest, heads[column].length());
		}
		List<String> lines = new ArrayList<>();
		lines.add(line(indent, heads, widths));
		rows.forEach(row -> lines.add(line(indent, row, widths)));
		return lines;
	}

	private String line(String indent, String[] cells, int[] widths) {
		StringBuilder line = new StringBuilder(indent);
		boolean first = true;
		for (int column = 0; column < cells.length; column++) {
			if (widths[column] == 0) {
				continue;
			}
			String blanks = " ".repeat(widths[column] - cells[column].length());
			line.append(first ? "" : "  ").append(right[column] ? blanks + cells[column] : cells[column] + blanks);
			first = false;
		}
		return line.toString().stripTrailing();
	}
}
