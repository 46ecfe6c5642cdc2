/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.report.WrappedText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Rows of words and figures in aligned columns; figures stand at the right of their columns.
 */
final class TextTable {

	private static final String GAP = "  ";

	/** Before what does not fit in the first line of a cell. */
	private static final String NEXT = "  ";

	/** No column of texts is made narrower than this. */
	private static final int LEAST = 16;

	private final String[] heads;
	private final boolean[] right;
	private final boolean worstFirst;
	private final List<String[]> rows = new ArrayList<>();

	/**
	 * A table without rows.
	 *
	 * @param heads what stands above the columns; one that begins with '>' is that of figures
	 */
	TextTable(String... heads) {
		this(false, heads);
	}

	private TextTable(boolean worstFirst, String... heads) {
		this.worstFirst = worstFirst;
		right = new boolean[heads.length];
		this.heads = new String[heads.length];
		for (int i = 0; i < heads.length; i++) {
			right[i] = heads[i].startsWith(">");
			this.heads[i] = right[i] ? heads[i].substring(1) : heads[i];
		}
	}

	/** A table without rows, of which no row will be worse than one above it. */
	static TextTable worstFirst(String... heads) {
		return new TextTable(true, heads);
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

	/** What is left to say if no more than that many rows are shown. */
	Optional<String> rest(int most) {
		return rows.size() <= most ? Optional.empty()
				: Optional.of("and " + (rows.size() - most) + " more" + (worstFirst ? ", none of them worse" : "") + " (--all shows them)");
	}

	/**
	 * The lines of the table, columns without a single entry left out.
	 *
	 * @param most how many rows are wanted at most
	 * @param width how long a line may be; texts go on in the next one where it would be longer, figures never
	 */
	List<String> lines(String indent, int most, int width) {
		List<String[]> shown = rows.subList(0, Math.min(most, rows.size()));
		int[] widths = new int[heads.length];
		for (int column = 0; column < heads.length; column++) {
			int widest = 0;
			for (String[] row : shown) {
				widest = Math.max(widest, row[column].length());
			}
			widths[column] = widest == 0 ? 0 : Math.max(widest, heads[column].length());
		}
		int[] words = new int[heads.length];
		for (String[] row : shown) {
			for (int column = 0; column < heads.length; column++) {
				words[column] = Math.max(words[column], longestWord(row[column]));
			}
		}
		narrow(widths, words, width - indent.length());
		narrow(widths, new int[heads.length], width - indent.length());
		List<String> lines = new ArrayList<>();
		lines.addAll(lines(indent, heads, widths));
		shown.forEach(row -> lines.addAll(lines(indent, row, widths)));
		return lines;
	}

	private static int longestWord(String cell) {
		return Arrays.stream(cell.split(" ")).mapToInt(String::length).max().orElse(0) + NEXT.length();
	}

	/** Takes from the widest column of texts that is wider than it has to be, until all fit. */
	private void narrow(int[] widths, int[] least, int width) {
		int columns = (int) Arrays.stream(widths).filter(each -> each > 0).count();
		while (Arrays.stream(widths).sum() + GAP.length() * (columns - 1) > width) {
			int widest = -1;
			for (int column = 0; column < widths.length; column++) {
				if (!right[column] && widths[column] > Math.max(least[column], LEAST) && (widest < 0 || widths[column] > widths[widest])) {
					widest = column;
				}
			}
			if (widest < 0) {
				return;
			}
			widths[widest]--;
		}
	}

	/** A row, in more than one line if a cell is too long for its column. */
	private List<String> lines(String indent, String[] cells, int[] widths) {
		List<List<String>> broken = new ArrayList<>();
		for (int column = 0; column < cells.length; column++) {
			broken.add(right[column] || widths[column] == 0 ? List.of(cells[column]) : WrappedText.lines("", NEXT, cells[column], widths[column]));
		}
		List<String> lines = new ArrayList<>();
		int deepest = broken.stream().mapToInt(List::size).max().orElse(0);
		for (int depth = 0; depth < deepest; depth++) {
			int at = depth;
			lines.add(line(indent, broken.stream().map(cell -> at < cell.size() ? cell.get(at) : "").toArray(String[]::new), widths));
		}
		return lines;
	}

	private String line(String indent, String[] cells, int[] widths) {
		StringBuilder line = new StringBuilder(indent);
		boolean first = true;
		for (int column = 0; column < cells.length; column++) {
			if (widths[column] == 0) {
				continue;
			}
			String cell = cells[column];
			String blanks = " ".repeat(widths[column] - cell.length());
			line.append(first ? "" : GAP).append(right[column] ? blanks + cell : cell + blanks);
			first = false;
		}
		return line.toString().stripTrailing();
	}
}
