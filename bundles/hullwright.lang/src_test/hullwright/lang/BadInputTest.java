/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Texts come from anyone and are half written most of the time. Whatever the bytes: nothing is thrown, nothing is logged as
 * an inner failure, and every problem points into the text. The time limit is only there to end a hang.
 */
@Timeout(value = 120, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class BadInputTest {

	private static final URI PLACE = URI.createURI("memory:/bad.hull");

	/** Every place of every text takes minutes; {@code -Dhullwright.everyCut=true} asks for it. */
	private static final boolean EVERY_CUT = Boolean.getBoolean("hullwright.everyCut");
	private static final int CUTS_OF_A_SNIPPET = 4;
	private static final int CUTS_OF_A_FILE = 40;
	/** The larger the file, the longer each cut takes; so many characters are read again and again, no more. */
	private static final int CHARACTERS_READ = 150_000;

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

	/** A text to damage, where it lies, and in how many places. */
	record Text(String name, String text, URI place, int cuts) {

		static Text of(Path file) {
			URI besideTheFile = URI.createFileURI(file.resolveSibling("cut.hull").toAbsolutePath().normalize().toString());
			String text = LanguageReference.text(file);
			return new Text(file.getFileName().toString(), text, besideTheFile, Math.min(CUTS_OF_A_FILE, 2 + CHARACTERS_READ / text.length()));
		}

		static Text of(ReferenceSnippets.Snippet snippet) {
			return new Text(snippet.toString(), MarkedText.of(snippet.file()).text(), ReferenceSnippets.PLACE, CUTS_OF_A_SNIPPET);
		}

		/** The same places each time: all, if there are few or all are asked for. */
		int[] places(int of) {
			return EVERY_CUT || of <= cuts ? IntStream.range(0, of).toArray() : new Random(of).ints(cuts, 0, of).toArray();
		}

		@Override
		public String toString() {
			return name;
		}
	}

	/** Every text that ships, one with every construct of the language, and the snippets of the reference. */
	static Stream<Text> texts() {
		Stream<Path> files = Stream.concat(HullTexts.shipped(), Stream.of(Path.of("src_test/hullwright/lang/whole-language.hull")));
		return Stream.concat(files.map(Text::of), ReferenceSnippets.all().stream().map(Text::of));
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
	@MethodSource("texts")
	void cutAnywhere(Text text) {
		for (int end : text.places(text.text.length())) {
			problemsOf(text.text.substring(0, end).getBytes(StandardCharsets.UTF_8), text.place);
		}
	}

	@ParameterizedTest
	@MethodSource("texts")
	void withoutOneOfItsWords(Text text) {
		List<ILeafNode> words = wordsOf(text);
		for (int at : text.places(words.size())) {
			ILeafNode word = words.get(at);
			problemsOf(replaced(text.text, word, "").getBytes(StandardCharsets.UTF_8), text.place);
		}
	}

	/** A word where another should stand: what the hurried do, and what damaged copies hold. */
	@ParameterizedTest
	@MethodSource("texts")
	void withOneWordInPlaceOfAnother(Text text) {
		List<ILeafNode> words = wordsOf(text);
		Random random = new Random(words.size());
		for (int at : text.places(words.size())) {
			String other = words.get(random.nextInt(words.size())).getText();
			problemsOf(replaced(text.text, words.get(at), " " + other + " ").getBytes(StandardCharsets.UTF_8), text.place);
		}
	}

	private List<ILeafNode> wordsOf(Text text) {
		List<ILeafNode> words = new ArrayList<>();
		project.read(text.text.getBytes(StandardCharsets.UTF_8), text.place).getParseResult().getRootNode().getLeafNodes().forEach(leaf -> {
			if (!leaf.isHidden()) {
				words.add(leaf);
			}
		});
		return words;
	}

	private static String replaced(String text, ILeafNode word, String other) {
		return text.substring(0, word.getOffset()) + other + text.substring(word.getEndOffset());
	}

	/** Wherever the language takes a quantity: none of these is one, and each is told where it stands. */
	@ParameterizedTest
	@MethodSource("quantities")
	void noQuantity(String before, String right, String after) {
		assertEquals(List.of(), HullTexts.describe(problemsOf(before + right + after)), "the text as it should be");
		String wrongKind = before.startsWith("profile") ? "3 parsec" : right.endsWith(" V") ? "3 m" : "3 V";
		for (String wrong : List.of("3", "-" + right, wrongKind, "3 parsec", "1e3 m", "NaN", "Infinity m", "0x10 m", ".5 m", "5. m", "1,5 m",
				"9".repeat(400) + right.substring(right.indexOf(' ')), "m 3", "\"3 m\"")) {
			List<Issue> problems = problemsOf(before + wrong + after);
			assertFalse(problems.isEmpty(), () -> "no problem with " + before + wrong + after);
			int end = before.length() + wrong.length() + 10;
			assertTrue(problems.get(0).getOffset() <= end, () -> wrong + " is told too late: " + problems.get(0));
		}
	}

	static Stream<Arguments> quantities() {
		return Stream.of(
				arguments("catalog C { cable c { stock ", "1 m", " } }"),
				arguments("catalog C { cable c { stock 1 m, ", "1 m", " } }"),
				arguments("catalog C { cable c { backbone up to ", "100 m", " } }"),
				arguments("catalog C { cable c { keeps ", "0.3 m", " from compass } }"),
				arguments("catalog C { cable c { power ", "22 AWG", " } }"),
				arguments("catalog C { cable c { power 22 AWG, ", "57 mohm/m", " each way } }"),
				arguments("catalog C { cable c { rated ", "3 A", " } }"),
				arguments("catalog C { cable c { delay ", "4.46 ns/m", " } }"),
				arguments("catalog C { family f { contact ", "5 mohm", " } }"),
				arguments("catalog C { message 1 { every ", "1 s", " } }"),
				arguments("catalog C { device d { supply ", "9 V", " .. 16 V } }"),
				arguments("catalog C { device d { supply 9 V .. ", "16 V", " } }"),
				arguments("catalog C { device d { load ", "3 LEN", " at 12 V } }"),
				arguments("catalog C { device d { load 3 LEN, at most ", "4 LEN", " } }"),
				arguments("catalog C { device d { load 3 LEN, starts with 6 W for ", "2 ms", " } }"),
				arguments("catalog C { device d { line l : talker, ", "4800 baud", " } }"),
				arguments("catalog C { device d { line l : drives ", "20 mA", " } }"),
				arguments("catalog C { fuse f { opens at 2 times rated within ", "5 s", " } }"),
				arguments("series S { places { p; q } route r from p to q ", "9 m", " }"),
				arguments("series S { bank b { ", "12 V", " } }"),
				arguments("series S { bank b { internal resistance ", "8 mohm", " } }"),
				arguments("series S { supply b { lead 1 m each way of ", "1.5 mm2", " } }"),
				arguments("series S { bank b { 12 V } state s { b dips to ", "9 V", " for 1 s } }"),
				arguments("series S { bank b { 12 V } state s { b dips to 9 V for ", "1 s", " } }"),
				arguments("series S { network n { backbone { cable ", "1 m", " } } }"),
				arguments("series S { network n { backbone { cable along ", "1 m", " } } }"),
				arguments("series S { serial l at ", "4800 baud", " { } }"),
				arguments("series S { wireless w { delay ", "10 ms", " } }"),
				arguments("profile P from standard { a/b { error above ", "6 m", " } }"));
	}

	/** Whole numbers beyond what a machine word holds, dates, ports without end: told, not thrown. */
	@ParameterizedTest
	@ValueSource(strings = {
			"catalog C { message 1 { priority «99999999999» } }",
			"catalog C { device d { addresses «2147483648» } }",
			"series S { network n { drop «a».«2147483648» to d : «e» } }",
			"series S { options { a } network n when from hull «99999999999» { } }" })
	void aNumberBeyondAllMeasure(String text) {
		List<String> told = HullTexts.describe(problemsOf(MarkedText.of(text).text()));
		assertTrue(told.stream().anyMatch(message -> message.contains("is too large; the largest number is 2147483647")), told::toString);
	}

	@Test
	void requirementsImportsAndFeedsThatGoInCircles(@TempDir Path folder) throws IOException {
		assertEquals(List.of(), HullTexts.describe(problemsOf("series S { options { a requires b; b requires c; c requires a; d excludes d } }")));
		for (String file : List.of("a", "b", "c")) {
			String imports = Stream.of("a", "b", "c").map(other -> "import \"" + other + ".hull\"\n").reduce("", String::concat);
			Files.writeString(folder.resolve(file + ".hull"), imports + "series S { }");
		}
		assertEquals(3, HullTexts.problems(project.read(folder.resolve("a.hull"))).size());
		assertEquals(2, problemsOf("series S { converter a { from b } converter b { from a } }").size());
	}

	@Test
	void sizesThatNoBoatHasAreStillRead() {
		assertEquals(List.of(), HullTexts.describe(problemsOf("""
				catalog C {
					family f { standard }
					cable light { stock 5 km }
					tee t { backbone f male, f female; ports 1..2000000000 : f female }
					device d { port bus : f male }
				}
				series S { network n { backbone of light { cable 5 km tee a : t } drop a.1999999999 via 5 km to far : d } }
				""")));
	}

	/** Ten thousand devices in one network: each is linked once, in time that grows with their number. */
	@Test
	void tenThousandDevices() {
		StringBuilder boat = new StringBuilder("""
				catalog C {
					family f { standard }
					cable light { stock 1 m }
					tee t { backbone f male, f female; ports 1..8 : f female }
					device d { port bus : f male }
				}
				series S { network n { backbone of light {
				""");
		for (int i = 0; i < 1250; i++) {
			boat.append("tee t").append(i).append(" : t cable 1 m\n");
		}
		boat.append("}\n");
		for (int i = 0; i < 10_000; i++) {
			boat.append("drop t").append(i / 8).append('.').append(i % 8 + 1).append(" via 1 m to d").append(i).append(" : d\n");
		}
		assertEquals(List.of(), HullTexts.describe(problemsOf(boat.append("} }").toString())));
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
