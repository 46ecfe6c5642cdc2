/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hullwright.testkit.RulePage.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What a mark and a page say is read as it is meant, and what is nearly a mark is refused rather than passed over.
 */
class ReadingMarksTest {

	@Test
	void aMarkBelongsToTheLineAboveAndIsNoPartOfTheText() {
		MarkedText marked = MarkedText.of("one\n  two three\n  // ^^^ error a/b-c: far too long [when x]\nfour");
		assertEquals("one\n  two three\nfour", marked.text());
		assertEquals(List.of(new Expectation(2, 6, 3, "error a/b-c: far too long [when x]")), marked.expected());
	}

	@Test
	void twoMarksMayBelongToOneLine() {
		MarkedText marked = MarkedText.of("  text here\n// ^ advice a/b-c: first\n//    ^^ warning d/e-f: second\n");
		assertEquals(List.of(new Expectation(1, 4, 1, "advice a/b-c: first"), new Expectation(1, 7, 2, "warning d/e-f: second")), marked.expected());
		assertEquals("  text here\n", marked.text());
	}

	@Test
	void whatIsNearlyAMarkIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> MarkedText.of("text\n// ^^ eror a/b-c: slip\n"));
		assertThrows(IllegalArgumentException.class, () -> MarkedText.of("text\n// ^^\n"));
	}

	@Test
	void anExampleSaysWhatItShows() {
		RulePage page = RulePage.of("# Title\n\n## Examples\n\n```hull breaks\na\n```\n\n```hull mended\nb\n```\n");
		assertEquals(List.of("Examples"), page.headings());
		assertEquals(List.of(Kind.BREAKS, Kind.MENDED), page.examples().stream().map(RulePage.Example::kind).toList());
		assertEquals(6, page.examples().get(0).line());
		assertThrows(IllegalArgumentException.class, () -> RulePage.of("```hull\na\n```\n"));
		assertThrows(IllegalArgumentException.class, () -> RulePage.of("```hull brakes\na\n```\n"));
	}
}
