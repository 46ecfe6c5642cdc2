/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.formatting;

import java.util.List;

/**
 * A text in canonical layout, or the text as it was and why it was left alone.
 *
 * @param text the text
 * @param problems what the parser does not understand; empty if the text is laid out
 */
public record FormattedText(String text, List<Problem> problems) {

	public FormattedText {
		problems = List.copyOf(problems);
	}

	/**
	 * Something that the parser does not understand.
	 *
	 * @param offset where it begins, in characters
	 * @param length how long it is, in characters
	 * @param line its line, from 1
	 * @param column its column in that line, from 1
	 * @param message what is wrong
	 */
	public record Problem(int offset, int length, int line, int column, String message) {
	}
}
