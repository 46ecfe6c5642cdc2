/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.chart;

import hullwright.documents.scene.Scene;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A picture of figures with their table.
 *
 * @param scene the picture
 * @param table its rows, the headings first
 */
public record Chart(Scene scene, List<List<String>> table) {

	public Chart {
		table = List.copyOf(table);
	}

	/** The table with tabs between columns, as spreadsheets take it. */
	public String tabbed() {
		return table.stream().map(row -> row.stream().map(cell -> cell.replaceAll("[\\t\\r\\n]+", " ")).collect(Collectors.joining("\t")) + "\n")
				.collect(Collectors.joining());
	}

	/** Whether it has nothing to show. */
	public boolean isEmpty() {
		return table.size() < 2;
	}
}
