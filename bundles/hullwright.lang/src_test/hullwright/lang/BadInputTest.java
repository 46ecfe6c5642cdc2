/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.log4j.Level;
import org.apache.log4j.Logger;
import org.apache.log4j.SimpleLayout;
import org.apache.log4j.WriterAppender;
import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.validation.Issue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Texts come from anyone and are half written most of the time. Whatever the bytes: nothing is thrown, nothing is logged as
 * an inner failure, and every problem points into the text. The time limit is only there to end a hang.
 */
@Timeout(value = 120, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class BadInputTest {

	private static final URI PLACE = URI.createURI("memory:/bad.hull");

	/** A file of more than so many characters is cut after every so many only, so that the test ends in seconds. */
	private static final int CUTS_OF_A_LARGE_FILE = 100;
	private static final int SMALL = 2000;

	private final HullTexts project = new HullTexts();

	/** Xtext logs what its services throw and goes on; a test must not. */
	private final StringWriter innerFailures = new StringWriter();
	private final WriterAppender log = new WriterAppender(new SimpleLayout(), innerFailures);

	@BeforeEach
	void listen() {
		log.setThreshold(Level.WARN);
		Logger.getRootLogger().addAppender(log);
	}

	@AfterEach
	void noInnerFailure() {
		Logger.getRootLogger().removeAppender(log);
		assertEquals("", innerFailures.toString());
	}

	static Stream<Path> shipped() {
		return HullTexts.shipped();
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "\uFEFF", " \t\r\n", "// nothing", "/* nothing */", "\uFEFF// nothing" })
	void aTextThatSaysNothingHasNoProblem(String text) {
		assertEquals(List.of(), HullTexts.describe(problemsOf(text)));
	}

	@Test
	void aByteOrderMarkAndCarriageReturnsChangeNothing() throws IOException {
		String boat = Files.readString(HullTexts.EXAMPLES.resolve("first-power-up/starter.hull"));
		assertEquals(List.of(), HullTexts.describe(problemsOf("\uFEFF" + boat.replace("\n", "\r\n"))));
	}

	@ParameterizedTest
	@ValueSource(strings = {
			"catalog C \"never closed",
			"catalog C \"closed in\nthe next line\" { }",
			"catalog C { } /* never closed",
			"catalog C { } /* never closed *",
			"catalog C { family f { source \"half an escape\\",
			"catalog C { family f { source \"unknown escape \\q\" } }",
			"series S { network n { backbone { tee a : b",
			"series S { supply h { 12",
			"series S { supply h { 12.",
			"series S { supply h { 12. V } }",
			"series S { supply h { .5 V } }",
			"series S { supply h { - V } }",
			"series S { network n { drop a.99999999999999999999 to d : e } }",
			"catalog C { tee t { ports 1..99999999999999999999 : f female } }",
			"catalog C { cable c { rated 99999999999999999999999999999999999999999999999999 kA } }",
			"hull 1", "}", "{", "\"", "'", "\\", "^", "€", "import", "import 7", "catalog", "catalog C {}}" })
	void aTextThatIsBrokenHasAProblem(String text) {
		assertFalse(problemsOf(text).isEmpty());
	}

	@ParameterizedTest
	@ValueSource(ints = { 1, 2, 3, 4, 5, 6, 7, 8 })
	void bytesOfNoText(int seed) {
		byte[] bytes = new byte[20_000];
		new Random(seed).nextBytes(bytes);
		assertFalse(problemsOf(bytes).isEmpty());
	}

	@Test
	void everyByteAndEveryKindOfCharacter() {
		byte[] bytes = new byte[256];
		for (int i = 0; i < bytes.length; i++) {
			bytes[i] = (byte) i;
		}
		assertFalse(problemsOf(bytes).isEmpty());
		assertFalse(problemsOf("\u0000".repeat(5000)).isEmpty());
		assertFalse(problemsOf("catalog \uD83D\uDEA4 { } // a boat outside the basic plane").isEmpty());
		assertFalse(problemsOf("catalog C\u0000D { }").isEmpty());
		assertFalse(problemsOf("\uD800").isEmpty());
	}

	@ParameterizedTest
	@ValueSource(strings = { "{", "(", "[", "catalog C {", "network n {", "when a {", "series S { network n { backbone {", "/*", "not ", "a or ",
			"device d : e {", "1.", "-", "\"a\" ", "import \"b\" " })
	void twoHundredLevelsAndMore(String opening) {
		assertFalse(problemsOf(opening.repeat(200)).isEmpty());
		assertFalse(problemsOf("series S { network n { backbone { " + opening.repeat(200)).isEmpty());
		assertFalse(problemsOf("series S { network n { backbone { " + opening.repeat(5000)).isEmpty());
	}

	/** A condition may be as long as it likes: it is no nesting. */
	@Test
	void aConditionOfTenThousandTerms() {
		String condition = "a" + " and not a or a".repeat(10_000);
		assertEquals(List.of(), HullTexts.describe(problemsOf(
				"series S { options { a } network n { backbone { cable 1 m when " + condition + " when " + condition + " { cable 1 m } } } }")));
	}

	@Test
	void aLineOfAHundredThousandCharacters() {
		assertEquals(1, problemsOf("catalog C { } " + "x".repeat(100_000)).size());
		assertEquals(List.of(), HullTexts.describe(problemsOf("catalog C \"" + "x".repeat(100_000) + "\" { }")));
	}

	@ParameterizedTest
	@MethodSource("shipped")
	void cutAnywhere(Path file) throws IOException {
		String text = Files.readString(file);
		int step = text.length() <= SMALL ? 1 : Math.max(1, text.length() / CUTS_OF_A_LARGE_FILE);
		URI besideTheFile = URI.createFileURI(file.resolveSibling("cut.hull").toAbsolutePath().normalize().toString());
		for (int end = 0; end < text.length(); end += step) {
			problemsOf(text.substring(0, end).getBytes(StandardCharsets.UTF_8), besideTheFile);
		}
	}

	@ParameterizedTest
	@MethodSource("shipped")
	void withoutOneOfItsWords(Path file) throws IOException {
		String text = Files.readString(file);
		URI besideTheFile = URI.createFileURI(file.resolveSibling("cut.hull").toAbsolutePath().normalize().toString());
		List<ILeafNode> words = new ArrayList<>();
		XtextResource whole = project.read(file);
		whole.getParseResult().getRootNode().getLeafNodes().forEach(leaf -> {
			if (!leaf.isHidden()) {
				words.add(leaf);
			}
		});
		int step = Math.max(1, words.size() / CUTS_OF_A_LARGE_FILE);
		for (int i = 0; i < words.size(); i += step) {
			ILeafNode word = words.get(i);
			String without = text.substring(0, word.getOffset()) + text.substring(word.getEndOffset());
			assertNotEquals(text, without);
			problemsOf(without.getBytes(StandardCharsets.UTF_8), besideTheFile);
		}
	}

	private List<Issue> problemsOf(String text) {
		return problemsOf(text.getBytes(StandardCharsets.UTF_8), PLACE);
	}

	private List<Issue> problemsOf(byte[] bytes) {
		return problemsOf(bytes, PLACE);
	}

	/** Reads, links and validates, and asserts what holds of every problem. */
	private List<Issue> problemsOf(byte[] bytes, URI place) {
		XtextResource resource = project.read(bytes, place);
		int length = resource.getParseResult().getRootNode().getTotalLength();
		List<Issue> problems = HullTexts.problems(resource);
		for (Issue problem : problems) {
			int start = problem.getOffset();
			int end = start + problem.getLength();
			assertTrue(0 <= start && start <= end && end <= length, () -> start + " to " + end + " of " + length + ": " + problem);
			assertTrue(problem.getLineNumber() >= 1, problem::toString);
			assertFalse(problem.getMessage().isBlank());
			assertFalse(problem.getMessage().contains("Exception") || problem.getMessage().contains("hullwright."), problem::getMessage);
		}
		return problems;
	}
}
