/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes text safe for Markdown with tables (GitHub Flavored Markdown).
 */
final class MarkdownText {

	private static final Pattern BACKTICKS = Pattern.compile("`+");

	private MarkdownText() {
	}

	/** Text in which nothing is taken for markup, an entity or the end of a cell; on one line. */
	static String escaped(String text) {
		return oneLine(text).replaceAll("([\\\\`*_{}\\[\\]<>#|~&!$])", "\\\\$1");
	}

	/** Text as it stands, outside of a table. */
	static String code(String text) {
		String line = oneLine(text);
		if (line.isBlank()) {
			return "";
		}
		int longest = 0;
		for (Matcher run = BACKTICKS.matcher(line); run.find();) {
			longest = Math.max(longest, run.end() - run.start());
		}
		String fence = "`".repeat(longest + 1);
		String padding = longest > 0 ? " " : "";
		return fence + padding + line + padding + fence;
	}

	/** Text as it stands, in a cell of a table, where a bar needs a backslash even in code. */
	static String codeInCell(String text) {
		return code(text).replace("|", "\\|");
	}

	/** A row of a table; the cells are Markdown. */
	static String row(String... cells) {
		return "| " + String.join(" | ", Arrays.asList(cells)) + " |";
	}

	private static String oneLine(String text) {
		return text.replaceAll("\\s*\\R\\s*", " ").replaceAll("[\\p{Cntrl}&&[^\\t]]", "\uFFFD");
	}
}
