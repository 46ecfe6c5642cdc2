/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.validation.Issue;

/**
 * A text in which the places of the expected problems are marked: {@code cable «6»}. The marks themselves are not part of
 * the text.
 */
record MarkedText(String text, List<String> marked) {

	/** Reads the marks out of a text; each place is told by its line, column and the words that stand there. */
	static MarkedText of(String textWithMarks) {
		StringBuilder text = new StringBuilder();
		List<String> places = new ArrayList<>();
		int start = -1;
		for (int i = 0; i < textWithMarks.length(); i++) {
			char c = textWithMarks.charAt(i);
			if (c == '«') {
				start = text.length();
			} else if (c == '»') {
				places.add(place(text.toString(), start, text.length()));
			} else {
				text.append(c);
			}
		}
		return new MarkedText(text.toString(), places);
	}

	private static String place(String text, int start, int end) {
		String before = text.substring(0, start);
		int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
		int column = start - (before.lastIndexOf('\n') + 1) + 1;
		return line + ":" + column + " '" + text.substring(start, end) + "'";
	}

	/** Asserts that exactly these problems are found, one at each mark, in the order of the text. */
	void assertProblems(String... messages) {
		assertProblems(new HullTexts(), URI.createURI("memory:/text.hull"), List.of(messages));
	}

	/** Asserts the same of the text as if it lay at a place of a project. */
	void assertProblems(HullTexts project, URI place, List<String> messages) {
		List<String> expected = new ArrayList<>();
		for (int i = 0; i < Math.max(messages.size(), marked.size()); i++) {
			expected.add((i < marked.size() ? marked.get(i) : "no mark") + ": " + (i < messages.size() ? messages.get(i) : "no message"));
		}
		List<String> found = HullTexts.problems(project.read(text.getBytes(StandardCharsets.UTF_8), place)).stream().map(this::describe).toList();
		assertEquals(String.join("\n", expected), String.join("\n", found));
	}

	private String describe(Issue problem) {
		return place(text, problem.getOffset(), problem.getOffset() + problem.getLength()) + ": " + problem.getMessage();
	}
}
