/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.lang.formatting.CanonicalLayout;
import hullwright.lang.formatting.FormattedText;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.parser.IParser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What holds for every text: a layout keeps words and comments, is its own layout, and does not depend on how wide the white
 * space was. The texts are all that ship and one that has every construct of the language, each as it is and spoilt at random.
 */
class LayoutPropertiesTest {

	private static final int SPOILT = 40;
	private static final CanonicalLayout LAYOUT = HullTexts.service(CanonicalLayout.class);

	static Stream<Path> texts() {
		return Stream.concat(HullTexts.shipped(), Stream.of(Path.of("src_test/hullwright/lang/whole-language.hull")));
	}

	@ParameterizedTest
	@MethodSource("texts")
	void aShippedTextKeepsWordsAndComments(Path file) throws IOException {
		assertKeepsAllAndSettles(Files.readString(file));
	}

	@ParameterizedTest
	@MethodSource("texts")
	void soDoesOneWithWhiteSpaceAndCommentsAtRandom(Path file) throws IOException {
		String text = Files.readString(file);
		for (int seed = 0; seed < SPOILT; seed++) {
			String spoilt = withOtherWhiteSpace(text, new Random(seed), LayoutPropertiesTest::anything);
			assertEquals(words(text), words(spoilt), "the test spoilt more than white space, seed " + seed);
			assertKeepsAllAndSettles(spoilt);
		}
	}

	@ParameterizedTest
	@MethodSource("texts")
	void theWidthOfWhiteSpaceDoesNotMatter(Path file) throws IOException {
		String text = withoutComments(Files.readString(file));
		String expected = format(text);
		for (int seed = 0; seed < SPOILT; seed++) {
			assertEquals(expected, format(withOtherWhiteSpace(text, new Random(seed), LayoutPropertiesTest::asManyLines)), "seed " + seed);
		}
	}

	@ParameterizedTest
	@MethodSource("texts")
	void lineEndsDoNotMatter(Path file) throws IOException {
		String text = Files.readString(file);
		assertEquals(format(text).replace("\n", "\r\n"), format(text.replace("\n", "\r\n")));
		assertEquals("\uFEFF" + format(text), format("\uFEFF" + text));
	}

	@ParameterizedTest
	@MethodSource("texts")
	void noLineEndsInWhiteSpaceAndNoTwoAreEmpty(Path file) throws IOException {
		String formatted = format(Files.readString(file));
		assertEquals(List.of(), formatted.lines().filter(line -> !line.equals(line.stripTrailing())).toList());
		assertTrue(!formatted.contains("\n\n\n") && !formatted.contains("{\n\n") && formatted.endsWith("}\n"), formatted);
	}

	private static void assertKeepsAllAndSettles(String text) {
		String formatted = format(text);
		assertEquals(words(text), words(formatted));
		assertEquals(comments(text), comments(formatted));
		assertEquals(formatted, format(formatted), () -> "laid out once:\n" + formatted + "\nof:\n" + text);
	}

	private static String format(String text) {
		FormattedText formatted = LAYOUT.format(text);
		assertEquals(List.of(), formatted.problems());
		return formatted.text();
	}

	private static List<ILeafNode> leaves(String text) {
		IParseResult read = HullTexts.service(IParser.class).parse(new StringReader(text));
		assertEquals(false, read.hasSyntaxErrors(), text);
		List<ILeafNode> leaves = new ArrayList<>();
		read.getRootNode().getLeafNodes().forEach(leaves::add);
		return leaves;
	}

	private static List<String> words(String text) {
		return leaves(text).stream().filter(leaf -> !leaf.isHidden()).map(ILeafNode::getText).toList();
	}

	/** The comments, those to the end of a line with whether they have the line to themselves. */
	private static List<String> comments(String text) {
		return leaves(text).stream().filter(LayoutPropertiesTest::isComment).map(leaf -> leaf.getText().startsWith("//")
				? leaf.getText().stripTrailing() + (startsLine(text, leaf.getOffset()) ? " alone" : " trailing") : leaf.getText()).toList();
	}

	private static boolean startsLine(String text, int offset) {
		return text.substring(Math.max(text.lastIndexOf('\n', offset - 1), 0), offset).isBlank();
	}

	private static boolean isComment(ILeafNode leaf) {
		return leaf.isHidden() && leaf.getText().startsWith("/");
	}

	private static String withoutComments(String text) {
		StringBuilder result = new StringBuilder();
		leaves(text).forEach(leaf -> result.append(!isComment(leaf) ? leaf.getText() : leaf.getText().startsWith("//") ? "\n" : " "));
		return result.toString();
	}

	private static String withOtherWhiteSpace(String text, Random random, BiFunction<String, Random, String> other) {
		StringBuilder result = new StringBuilder();
		leaves(text).forEach(leaf -> result.append(leaf.isHidden() && !isComment(leaf) ? other.apply(leaf.getText(), random) : leaf.getText()));
		return result.toString();
	}

	/** Any white space and comments, mostly a single space. */
	private static String anything(String whiteSpace, Random random) {
		return switch (random.nextInt(40)) {
		case 0 -> "\n";
		case 1 -> "  \n\n\n \n";
		case 2 -> " // a comment\n";
		case 3 -> "\n// two on\n\t// lines of their own\n\n";
		case 4 -> " /* within */ ";
		case 5 -> "/**/";
		case 6 -> "\n/* over\n   lines */";
		case 7 -> " /* one */ /* two */\n";
		case 8 -> " /* and */ // this  \n ";
		case 9 -> "\t ";
		case 10, 11, 12, 13, 14 -> whiteSpace;
		default -> " ";
		};
	}

	/** White space with as many line breaks; beyond two their number does not count. */
	private static String asManyLines(String whiteSpace, Random random) {
		long breaks = whiteSpace.chars().filter(each -> each == '\n').count();
		String blanks = " ".repeat(random.nextInt(4)) + "\t".repeat(random.nextInt(2));
		return breaks == 0 ? blanks + " " : "\n".repeat(breaks == 1 ? 1 : 2 + random.nextInt(3)) + blanks;
	}
}
