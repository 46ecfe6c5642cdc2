/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text with the findings that it is expected to give, each marked by carets under its place.
 *
 * @param text the text without the marks
 * @param expected the findings, in the order of the text
 */
public record MarkedText(String text, List<Expectation> expected) {

	private static final Pattern MARK = Pattern.compile("(\\s*//\\s*)(\\^+) ((?:error|warning|advice) \\S+: .*\\S)\\s*");
	private static final Pattern CARETS = Pattern.compile("\\s*//\\s*\\^.*");

	public MarkedText {
		expected = List.copyOf(expected);
	}

	/**
	 * Reads the marks of a text.
	 *
	 * @throws IllegalArgumentException if a line has carets under the line above but is no mark
	 */
	public static MarkedText of(String marked) {
		StringBuilder text = new StringBuilder();
		List<Expectation> expected = new ArrayList<>();
		int line = 0;
		for (String each : marked.split("\n", -1)) {
			Matcher mark = MARK.matcher(each);
			if (mark.matches()) {
				expected.add(new Expectation(line, mark.start(2) + 1, mark.group(2).length(), mark.group(3)));
			} else if (CARETS.matcher(each).matches()) {
				throw new IllegalArgumentException("not understood: '" + each.strip() + "'; a mark reads '// ^^^ error family/rule: message'");
			} else {
				text.append(line == 0 ? "" : "\n").append(each);
				line++;
			}
		}
		return new MarkedText(text.toString(), expected);
	}
}
