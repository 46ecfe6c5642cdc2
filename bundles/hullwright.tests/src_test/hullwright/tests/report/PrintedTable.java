/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A table as it stands on a page, read back by the places of its heads.
 *
 * @param network the network under whose name it stands
 * @param title the line above it
 * @param heads the line with its heads
 * @param rows its rows, without what goes on from the row above
 */
record PrintedTable(String network, String title, String heads, List<String> rows) {

	private static final String INDENT = "  ";

	/** The tables of a page whose titles begin so. */
	static List<PrintedTable> in(String page, String title) {
		List<PrintedTable> tables = new ArrayList<>();
		String network = "";
		for (String block : page.split("\n\n")) {
			List<String> lines = block.lines().toList();
			if (lines.get(0).startsWith("Network ")) {
				network = lines.get(0).substring("Network ".length());
			}
			if (lines.size() > 2 && lines.get(0).startsWith(title)) {
				List<String> rows = lines.subList(2, lines.size()).stream()
						.filter(line -> line.startsWith(INDENT) && line.charAt(INDENT.length()) != ' ' && line.strip().contains(INDENT)).toList();
				tables.add(new PrintedTable(network, lines.get(0), lines.get(1), rows));
			}
		}
		return tables;
	}

	/** What stands first in a row. */
	static String name(String row) {
		return row.strip().split(" {2,}")[0];
	}

	/** The figure of a row that ends where its head ends; empty if there is none. */
	String figure(String row, String head) {
		int end = heads.indexOf(INDENT + head) + INDENT.length() + head.length();
		if (heads.indexOf(INDENT + head) < 0 || end > row.length() || row.charAt(end - 1) == ' ') {
			return "";
		}
		String[] before = row.substring(0, end).split(" {2,}");
		return before[before.length - 1];
	}
}
