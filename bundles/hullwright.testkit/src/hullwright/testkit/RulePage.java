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
 * The page of a rule: headings and examples.
 *
 * @param headings the headings of the second level, in their order
 * @param examples the examples, in their order
 */
public record RulePage(List<String> headings, List<Example> examples) {

	/** The headings that every page has, in this order. */
	public static final List<String> REQUIRED_HEADINGS = List.of("Why it matters", "The limit", "How to mend it", "When not to care", "Examples");

	private static final Pattern FENCE = Pattern.compile("(?ms)^```hull +(\\w+)[ \\t]*\\n(.*?)^```[ \\t]*$");
	private static final Pattern ANY_FENCE = Pattern.compile("(?m)^```(\\S.*)$");
	private static final Pattern HEADING = Pattern.compile("(?m)^## (.*\\S)[ \\t]*$");

	public RulePage {
		headings = List.copyOf(headings);
		examples = List.copyOf(examples);
	}

	/** What an example shows. */
	public enum Kind {
		/** The rule finds something; what, is marked. */
		BREAKS,
		/** The rule finds nothing. */
		KEEPS,
		/** The example before, after the first fix of its finding. */
		MENDED
	}

	/**
	 * One example.
	 *
	 * @param kind what it shows
	 * @param text the text with its marks
	 * @param line the line of the page at which it starts, counted from 1
	 */
	public record Example(Kind kind, String text, int line) {
	}

	/**
	 * Reads a page.
	 *
	 * @throws IllegalArgumentException if an example does not say what it shows
	 */
	public static RulePage of(String markdown) {
		List<String> headings = new ArrayList<>();
		for (Matcher heading = HEADING.matcher(markdown); heading.find();) {
			headings.add(heading.group(1));
		}
		List<Example> examples = new ArrayList<>();
		for (Matcher fence = FENCE.matcher(markdown); fence.find();) {
			examples.add(new Example(kind(fence.group(1)), fence.group(2), lineOf(markdown, fence.start(2))));
		}
		long fences = ANY_FENCE.matcher(markdown).results().count();
		if (fences != examples.size()) {
			throw new IllegalArgumentException("an example starts with ```hull breaks, ```hull keeps or ```hull mended and ends with ```");
		}
		return new RulePage(headings, examples);
	}

	private static Kind kind(String word) {
		for (Kind kind : Kind.values()) {
			if (kind.name().equalsIgnoreCase(word)) {
				return kind;
			}
		}
		throw new IllegalArgumentException("an example shows what 'breaks', 'keeps' or is 'mended', not '" + word + "'");
	}

	private static int lineOf(String markdown, int offset) {
		return (int) markdown.substring(0, offset).chars().filter(character -> character == '\n').count() + 1;
	}
}
