/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.SeriesCoverage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever the text says, a check ends with a report: no exception, no place outside the file, no endless work.
 */
class TotalityTest {

	private static final Pattern WORD = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_]*|\\d+|\"[^\"\n]*\"|\\.\\.|[^\\s]");

	private static String whole() throws IOException {
		return Files.readString(Path.of("../hullwright.lang/src_test/hullwright/lang/whole-language.hull"));
	}

	private final Checker checker = Checker.create();

	private CheckReport check(String text) {
		CheckReport report = checker.check(Boats.request(text));
		for (ReportedFinding reported : report.findings()) {
			int start = reported.finding().origin().offset();
			int end = start + reported.finding().origin().length();
			assertTrue(0 <= start && start <= end && end <= text.length(), reported.finding().message() + " at " + start + " to " + end);
			assertTrue(!reported.finding().rule().equals(ProjectProblem.RULE_FAILED), reported.finding().message());
		}
		return report;
	}

	/** A word removed, doubled, or another of its kind in its place; what still reads as a boat must become one. */
	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4 })
	void slipsOfThePen(long seed) throws IOException {
		String whole = whole();
		Random random = new Random(seed);
		int boats = 0;
		for (int round = 0; round < 40; round++) {
			boats += boats(check(withASlip(whole, random)));
		}
		assertTrue(boats >= 50, "only " + boats + " boats were still understood");
	}

	private static int boats(CheckReport report) {
		return report.series().stream().mapToInt(series -> series.combinations() + series.hulls()).sum();
	}

	private static String withASlip(String text, Random random) {
		List<MatchResult> words = WORD.matcher(text).results().toList();
		MatchResult word = words.get(random.nextInt(words.size()));
		String instead = switch (random.nextInt(6)) {
		case 0 -> "";
		case 1 -> word.group() + " " + word.group();
		default -> anotherOfItsKind(word, words, random);
		};
		return text.substring(0, word.start()) + instead + text.substring(word.end());
	}

	/** A number for a number, a part for a part: that reads on more often, and says another boat. */
	private static String anotherOfItsKind(MatchResult word, List<MatchResult> words, Random random) {
		String before = word.start() == 0 ? "" : words.get(words.indexOf(word) - 1).group();
		List<String> others = new ArrayList<>();
		for (int at = 1; at < words.size(); at++) {
			boolean number = Character.isDigit(word.group().charAt(0)) && Character.isDigit(words.get(at).group().charAt(0));
			if (number || words.get(at - 1).group().equals(before)) {
				others.add(words.get(at).group());
			}
		}
		return others.isEmpty() ? word.group() : others.get(random.nextInt(others.size()));
	}

	@Test
	void theTextBrokenOffAnywhere() throws IOException {
		String whole = whole();
		for (int end = 0; end < whole.length(); end += 61) {
			check(whole.substring(0, end));
		}
	}

	@Test
	void wrongThingsThatCanBeSaid() {
		CheckReport report = check("""
				import "standard:parts"
				series Wrong "Invented" {
				  options { a requires b; b requires a; never excludes never; alone requires nobody; nobody excludes alone }
				  supply s { 12 V }
				  network n {
				    backbone of light { tee t : block4 tee u : block4 tap p : midTap from s, s terminator x : endMale cable 5 km tee v : tee1 when never }
				    backbone second { }
				    drop t.1 via 0 m to x2 : windSensor
				    drop t.1 via tee1, block4 to y : windSensor
				    drop t.99 to z : windSensor when a and not a
				    join t.1 to t.1
				    join u to t
				    cap t.1, t.1 with microPortCap
				    feed t.1 from s, s
				  }
				  hull 1 with never, a { n.y via 1 m  remove n.v  n.v : block4 }
				}
				""");
		assertEquals(List.of(), report.findings().stream().filter(found -> found.finding().rule().startsWith("language")).toList());
		assertTrue(boats(report) > 0);
	}

	@Test
	void supplyThatFeedsItself() {
		List<String> findings = Boats.findings(check("series S { converter a { from b } converter b { from a } supply c { from c } }"));
		assertEquals(List.of("error language/feeds-in-circle: 'a' feeds itself, in a circle", "error language/feeds-in-circle: 'b' feeds itself, in a circle",
				"error language/feeds-in-circle: 'c' feeds itself, in a circle"), findings);
	}

	/** Far more than a boat has, in one network: slow is allowed, endless is not. */
	@Test
	void aNetworkFortyTimesAsLargeAsAllowed() {
		StringBuilder text = new StringBuilder("import \"standard:parts\"\nseries Many {\n  network n {\n    backbone of light {\n      terminator l : endFemale\n");
		for (int tee = 0; tee < 500; tee++) {
			text.append("      tee t").append(tee).append(" : block4\n");
		}
		text.append("      terminator r : endMale\n    }\n");
		for (int device = 0; device < 2000; device++) {
			text.append("    drop t").append(device / 4).append('.').append(device % 4 + 1).append(" via 1 m to d").append(device).append(" : windSensor\n");
		}
		CheckReport report = assertTimeoutPreemptively(Duration.ofMinutes(2), () -> Checker.create().check(CheckRequest.ofAll(
				Snapshot.of(Map.of("boat.hull", text.append("  }\n}\n").toString())), Boats.DAY)));
		List<String> rules = report.findings().stream().map(reported -> reported.finding().rule()).toList();
		assertTrue(rules.contains("cabling/too-many-nodes"), rules::toString);
		assertEquals(List.of(), rules.stream().filter(rule -> rule.startsWith("project/")).toList());
		assertEquals(1, boats(report));
	}
}
