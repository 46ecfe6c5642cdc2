/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.report.JUnitReport;
import hullwright.report.JsonReport;
import hullwright.report.MarkdownReport;
import hullwright.report.ProjectReport;
import hullwright.report.SarifReport;
import hullwright.report.TextDetail;
import hullwright.report.TextReport;
import hullwright.rules.report.BaselineUsed;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
import hullwright.rules.report.SetAside;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Test results and Markdown, and all formats against the JSON that programs of ours read.
 */
class OutputFormatsTest {

	private static final LocalDate DAY = LocalDate.of(2030, 1, 1);

	private static final String ODD = ReportedBoat.text("Odd <names> | and `marks`", "moves | aft *soon* <b>");

	private static CheckReport check(Map<String, String> texts) {
		return Checker.create().check(CheckRequest.ofAll(Snapshot.of(texts), DAY));
	}

	private static CheckReport example(String name) throws IOException {
		return Checker.create().check(CheckRequest.ofAll(Snapshot.ofFolder(Path.of("..", "hullwright.examples", "examples", name)), DAY));
	}

	/** The same findings again, set aside for each of the reasons there are. */
	private static CheckReport withAllReasons(CheckReport report) {
		List<ReportedFinding> found = report.findings();
		List<SetAside> aside = List.of(new SetAside(found.get(0), new SetAside.Waived("it | is `so`", Optional.empty(), found.get(0).finding().origin())),
				new SetAside(found.get(1), new SetAside.InBaseline()), new SetAside(found.get(2), new SetAside.InBaseline()),
				new SetAside(found.get(2), new SetAside.Silenced("cabling/terminator-missing", "Skerry.bus.backbone")));
		List<RuleRun> rules = report.rules().stream().map(rule -> rule.rule().equals("cabling/drop-too-long")
				? new RuleRun(rule.description(), rule.contributor(), RuleRun.State.FAILED, Optional.of("out of | luck"), rule.page()) : rule).toList();
		return new CheckReport(report.asOf(), found, aside, report.gaps(), rules, report.series(), report.files(),
				Optional.of(new BaselineUsed("accepted.json", "0".repeat(64), 2, 0.05)));
	}

	static List<CheckReport> reports() throws IOException {
		return List.of(example("faulty"), example("harbour-pilot"), example("faulty-text"), withAllReasons(example("faulty")), check(Map.of("boats/my boat.hull", ODD)),
				check(Map.of("boat.hull", ODD, "yard.hull", "profile Yard from standard { cabling/backbone-too-long off }")), check(Map.of()));
	}

	@ParameterizedTest
	@MethodSource("reports")
	void everyFormatTellsTheSameCounts(CheckReport report) throws Exception {
		List<ProjectReport> projects = List.of(new ProjectReport("x", report));
		Map<String, Long> counts = new TreeMap<>();
		JsonParser.parseString(JsonReport.of(projects)).getAsJsonObject().getAsJsonArray("projects").get(0).getAsJsonObject().getAsJsonObject("counts")
				.entrySet().forEach(count -> counts.put(count.getKey(), count.getValue().getAsLong()));
		assertEquals(KINDS.size(), counts.size());
		assertEquals(report.findings().size() + report.setAside().size(), counts.values().stream().mapToLong(Long::longValue).sum());
		assertEquals(counts, ofText(TextReport.of(projects, false, Set.of())), "text");
		assertEquals(counts, ofSarif(SarifReport.of(projects, "0.1.0", Map.of())), "SARIF");
		assertEquals(counts, ofTestResults(suite(report)), "test results");
		assertEquals(counts, ofMarkdown(MarkdownReport.of(projects)), "Markdown");
	}

	/** The kinds of counts, as JSON calls them, with the words of a text for people. */
	private static final Map<String, String> KINDS = Map.of("error", "errors?", "warning", "warnings?", "advice", "advice", "waived", "waived",
			"inBaseline", "in the baseline", "silenced", "that others explain");

	private static Map<String, Long> ofText(String text) {
		String sentences = text.lines().filter(line -> line.matches("(Not counted: )?\\d+ (" + String.join("|", KINDS.values()) + ").*\\."))
				.collect(Collectors.joining());
		Map<String, Long> counts = new TreeMap<>();
		KINDS.forEach((kind, word) -> {
			Matcher count = Pattern.compile("(\\d+) (" + word + ")\\b").matcher(sentences);
			counts.put(kind, count.find() ? Long.valueOf(count.group(1)) : 0);
		});
		return counts;
	}

	private static Map<String, Long> ofSarif(String log) {
		Map<String, Long> counts = none();
		JsonObject run = JsonParser.parseString(log).getAsJsonObject().getAsJsonArray("runs").get(0).getAsJsonObject();
		for (JsonElement result : run.getAsJsonArray("results")) {
			JsonArray suppressions = result.getAsJsonObject().getAsJsonArray("suppressions");
			String level = result.getAsJsonObject().get("level").getAsString();
			String why = suppressions.isEmpty() ? "" : suppressions.get(0).getAsJsonObject().get("justification").getAsString();
			counts.merge(suppressions.isEmpty() ? level.equals("note") ? "advice" : level : kindOf(why), 1L, Long::sum);
		}
		return counts;
	}

	private static Map<String, Long> ofTestResults(Element suite) {
		Map<String, Long> counts = none();
		String told = suite.getTextContent();
		for (String line : told.lines().map(String::strip).toList()) {
			Matcher found = Pattern.compile("(?:not counted, (.*?): )?(?:x/[^:]*:\\d+:\\d+: )?(error|warning|advice): .*").matcher(line);
			if (found.matches()) {
				counts.merge(found.group(1) == null ? found.group(2) : kindOf(found.group(1)), 1L, Long::sum);
			}
		}
		NodeList properties = suite.getElementsByTagName("property");
		for (int i = 0; i < properties.getLength(); i++) {
			Element property = (Element) properties.item(i);
			if (property.getAttribute("name").startsWith("count ")) {
				assertEquals(counts.get(property.getAttribute("name").substring(6)), Long.valueOf(property.getAttribute("value")), property.getAttribute("name"));
			}
		}
		return counts;
	}

	private static Map<String, Long> ofMarkdown(String markdown) {
		Map<String, Long> counts = none();
		markdown.lines().filter(line -> line.matches("\\| .*\\| (error|warning|advice) \\| .*")).filter(line -> !line.startsWith("| errors "))
				.map(line -> line.split("(?<!\\\\) \\| |^\\| | \\|$", -1))
				.forEach(cells -> counts.merge(cells.length == 7 ? kindOf(cells[5]) : cells[2], 1L, Long::sum));
		String[] table = markdown.lines().filter(line -> line.matches("(\\| \\d+ ){6}\\|")).findFirst().orElseThrow().split("[ |]+");
		assertEquals(List.of(counts.get("error"), counts.get("warning"), counts.get("advice"), counts.get("waived"), counts.get("inBaseline"),
				counts.get("silenced")), Arrays.stream(table).skip(1).map(Long::valueOf).toList());
		return counts;
	}

	private static Map<String, Long> none() {
		return new TreeMap<>(KINDS.keySet().stream().collect(Collectors.toMap(kind -> kind, kind -> 0L)));
	}

	private static String kindOf(String why) {
		return why.startsWith("waived") ? "waived" : why.startsWith("explained by") ? "silenced" : "inBaseline";
	}

	private static Element suite(CheckReport report) throws Exception {
		String xml = JUnitReport.of(List.of(new ProjectReport("x", report)));
		return (Element) DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)))
				.getElementsByTagName("testsuite").item(0);
	}

	@ParameterizedTest
	@MethodSource("reports")
	void testResultsCountWhatTheyHold(CheckReport report) throws Exception {
		Element suite = suite(report);
		for (String[] each : new String[][] { { "tests", "testcase" }, { "failures", "failure" }, { "errors", "error" }, { "skipped", "skipped" } }) {
			NodeList found = suite.getElementsByTagName(each[1]);
			assertEquals(suite.getAttribute(each[0]), String.valueOf(found.getLength()), each[0]);
		}
	}

	@ParameterizedTest
	@MethodSource("reports")
	void everyFormatTellsWhatWasReadAndWhatBecameOfTheRules(CheckReport report) throws Exception {
		List<ProjectReport> projects = List.of(new ProjectReport("x", report));
		for (String told : List.of(JsonReport.of(projects), SarifReport.of(projects, "0.1.0", Map.of()), JUnitReport.of(projects), MarkdownReport.of(projects),
				TextReport.of(projects, false, EnumSet.allOf(TextDetail.class)))) {
			report.files().forEach(file -> assertTrue(told.contains(file.sha256().substring(0, 12)), told));
			report.baseline().ifPresent(baseline -> assertTrue(told.contains(baseline.file()), told));
			report.rules().stream().filter(rule -> rule.state() != RuleRun.State.RUN).forEach(rule -> assertTrue(told.contains(rule.rule()), told));
			report.setAside().forEach(each -> assertTrue(told.contains(each.finding().finding().element()), told));
		}
	}

	@Test
	void aRuleThatFailedKeepsWhatItHadFound() throws Exception {
		Element suite = suite(withAllReasons(example("faulty")));
		Element error = (Element) suite.getElementsByTagName("error").item(0);
		assertTrue(error.getTextContent().startsWith("out of | luck\nx/survey-launch.hull:74:38: error: the drop to air is 6.8 m long"), error.getTextContent());
	}

	@Test
	void textStaysCalmUnlessAsked() throws IOException {
		List<ProjectReport> projects = List.of(new ProjectReport("x", check(Map.of("boat.hull", ODD))));
		String calm = TextReport.of(projects, false, Set.of());
		assertTrue(calm.contains("Not counted: 1 waived.\n") && !calm.contains("soon") && !calm.contains("SHA-256"), calm);
		String all = TextReport.of(projects, false, EnumSet.allOf(TextDetail.class));
		assertTrue(all.contains("         waived until 2031-02-03: moves | aft *soon* <b>\n"), all);
		assertTrue(all.matches("(?s).*\n  [0-9a-f]{12}  standard:parts \\(catalog\\)\n.*"), all);
	}

	/** The inline rules of GitHub Flavored Markdown 0.29: a backslash before punctuation, code between as many backticks as it does not hold. */
	@Test
	void oddCharactersAreHarmless() throws Exception {
		CheckReport broken = check(Map.of("boat.hull", "series Bad\u0001 \"\uD83D\uDEA4 <&\" { \u0002 }"));
		assertTrue(suite(broken).getElementsByTagName("testcase").getLength() > 0);
		assertTrue(MarkdownReport.of(List.of(new ProjectReport("x", broken))).chars().noneMatch(each -> each < ' ' && each != '\n'));
		String markdown = MarkdownReport.of(List.of(new ProjectReport("a|`b``", check(Map.of("boat.hull", ODD)))));
		assertTrue(markdown.startsWith("# Check of ``` a|`b`` ```, as of "), markdown);
		assertTrue(markdown.contains("waived until 2031-02-03: moves \\| aft \\*soon\\* \\<b\\> |"), markdown);
		markdown.lines().filter(line -> line.startsWith("|") && line.contains("| error |"))
				.forEach(line -> assertEquals(line.startsWith("| `") ? 7 : 8, line.split("(?<!\\\\)\\|", -1).length, line));
	}
}
