/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.lang.HullLanguage;
import hullwright.lang.imports.BuiltInCatalogs;
import hullwright.spec.Catalog;
import hullwright.spec.Message;
import hullwright.spec.Pgn;
import hullwright.spec.Sentence;
import hullwright.spec.SpecFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.junit.jupiter.api.Test;

/**
 * Holds the standard list of PGNs and sentences against an open dataset, the CANboat PGN database (npm package
 * @canboat/ts-pgns, Apache-2.0).
 */
class StandardMessagesTest {

	/** Longest fast packet: 6 bytes in the first frame, 7 in each of 31 more (published at large; 32 frames, 5-bit counter). */
	private static final int LONGEST_FAST_PACKET = 223;
	/** IEC 61162-1: at most 82 characters, "$" and the line end included. */
	private static final int LONGEST_SENTENCE = 82;

	private static final Catalog MESSAGES = messages();
	private static final List<Pgn> PGNS = all(Pgn.class);
	private static final List<Sentence> SENTENCES = all(Sentence.class);

	private static Catalog messages() {
		Resource file = HullLanguage.services().getInstance(XtextResourceSet.class).getResource(BuiltInCatalogs.uriOf("messages"), true);
		assertEquals(List.of(), file.getErrors().stream().map(error -> error.getLine() + ": " + error.getMessage()).toList());
		return (Catalog) ((SpecFile) file.getContents().get(0)).getDeclarations().get(0);
	}

	private static <T extends Message> List<T> all(Class<T> type) {
		return MESSAGES.getMessages().stream().filter(type::isInstance).map(type::cast).toList();
	}

	private static int number(Pgn pgn) {
		return Integer.parseInt(pgn.getName());
	}

	@Test
	void coversWhatADesignOfficeMeets() {
		assertTrue(PGNS.size() >= 120, PGNS.size() + " PGNs");
		assertTrue(SENTENCES.size() >= 40, SENTENCES.size() + " sentences");
		assertEquals(MESSAGES.getMessages().size(), MESSAGES.getMessages().stream().map(Message::getName).distinct().count());
	}

	@Test
	void everyPgnIsInTheDatasetAndBelongsToNoMaker() throws IOException {
		Set<Integer> known = OpenDataset.read().pgns();
		assertEquals(List.of(), PGNS.stream().map(StandardMessagesTest::number)
				.filter(pgn -> OpenDataset.isProprietary(pgn) || !known.contains(pgn)).toList());
	}

	@Test
	void figuresAreThoseOfTheDatasetButForTheKnownDifferences() throws IOException {
		Map<String, String> found = differences(OpenDataset.read());
		Map<String, String> known = new LinkedHashMap<>();
		KnownDifferences.ALL.forEach(row -> known.put(row.pgn() + " " + row.what(), row.reason()));
		assertEquals(KnownDifferences.ALL.size(), known.size(), "a difference is listed twice");

		Map<String, String> unlisted = new TreeMap<>(found);
		unlisted.keySet().removeAll(known.keySet());
		assertEquals(Map.of(), unlisted, "differences that are not in the table");

		known.keySet().removeAll(found.keySet());
		assertEquals(Map.of(), known, "rows of the table that are no difference any more");
	}

	private static Map<String, String> differences(OpenDataset dataset) {
		Map<String, String> found = new TreeMap<>();
		for (Pgn pgn : PGNS) {
			PgnFacts.of(pgn).differencesFrom(dataset.facts(number(pgn)))
					.forEach((what, figures) -> found.put(pgn.getName() + " " + what, figures));
		}
		return found;
	}

	@Test
	void thePgnsWithASourceOfTheirOwnAreThoseThatDiffer() {
		Set<Integer> differing = new TreeSet<>(KnownDifferences.ALL.stream().map(KnownDifferences::pgn).toList());
		assertEquals(differing, new TreeSet<>(PGNS.stream().filter(pgn -> pgn.getSource() != null).map(StandardMessagesTest::number).toList()));
	}

	@Test
	void whatIsLeftOutIsLeftOutForAReason() throws IOException {
		Set<Integer> missing = new TreeSet<>(OpenDataset.read().pgns());
		PGNS.forEach(pgn -> missing.remove(number(pgn)));
		for (LeftOut group : LeftOut.GROUPS) {
			Set<Integer> members = missing.stream().filter(group::holds).collect(Collectors.toSet());
			assertEquals(group.count(), members.size(), group.reason());
			missing.removeAll(members);
		}
		assertEquals(Set.of(), missing);
	}

	@Test
	void lengthsFitTheirFrames() {
		for (Pgn pgn : PGNS) {
			int longest = pgn.isFast() ? LONGEST_FAST_PACKET : 8;
			assertTrue(pgn.getLength() > 0 && pgn.getLength() <= longest, pgn.getName() + ": " + pgn.getLength() + " bytes");
			assertTrue(!pgn.isVaries() || pgn.isFast() && pgn.getLeastLength() <= pgn.getLength(), pgn.getName());
		}
		for (Sentence sentence : SENTENCES) {
			assertTrue(sentence.getLength() > 0 && sentence.getLength() <= LONGEST_SENTENCE, sentence.getName() + ": " + sentence.getLength());
		}
	}

	@Test
	void titlesAreOurOwn() throws IOException {
		Set<String> theirs = OpenDataset.read().descriptions();
		assertTrue(theirs.size() > 200, "the dataset was read");
		assertEquals(List.of(), MESSAGES.getMessages().stream().map(Message::getTitle)
				.filter(title -> theirs.contains(OpenDataset.lettersOf(title))).toList());
		Set<String> seen = new HashSet<>();
		assertEquals(List.of(), PGNS.stream().map(Message::getTitle).filter(title -> title.isBlank() || !seen.add(title)).toList());
	}

	@Test
	void noMakerIsNamed() throws IOException {
		List<String> makers = OpenDataset.read().makers();
		assertTrue(makers.size() > 200, "the dataset was read");
		String text;
		try (InputStream file = BuiltInCatalogs.open(BuiltInCatalogs.uriOf("messages"))) {
			text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
		}
		assertEquals(List.of(), makers.stream().filter(maker -> names(text, maker)).toList());
		assertTrue(names("heading from " + makers.get(0) + ".", makers.get(0)));
		assertFalse(names(text + "x" + makers.get(0), makers.get(0)));
	}

	private static boolean names(String text, String maker) {
		return Pattern.compile("(?<!\\w)" + Pattern.quote(maker) + "(?!\\w)", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE).matcher(text).find();
	}

	@Test
	void noticeNamesTheLockedPackages() throws IOException {
		List<String> notice = Files.readAllLines(Path.of("..", "..", "releng", "third-party.md"));
		OpenDataset.lockedVersions().forEach((name, version) -> assertEquals(1,
				notice.stream().filter(line -> line.startsWith("| " + name + " | " + version + " | ")).count(), name + " " + version));
		assertTrue(OpenDataset.lockedVersions().containsKey("@canboat/ts-pgns"));
	}
}
