/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.report.JUnitReport;
import hullwright.report.JsonReport;
import hullwright.report.MarkdownReport;
import hullwright.report.ProjectReport;
import hullwright.report.SarifReport;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * SARIF, test results and Markdown: each against its own standard, and all against the JSON that programs of ours read. The schema
 * of SARIF 2.1.0 is that of the npm package @microsoft/sarif-multitool-linux (MIT), which {@code releng/open-data} pins; the
 * validator is networknt's.
 */
class OutputFormatsTest {

	private static final Path SCHEMA = Path.of("..", "..", "releng", "open-data", "node_modules", "@microsoft", "sarif-multitool-linux", "sarif-2.1.0.json");

	private static final LocalDate DAY = LocalDate.of(2030, 1, 1);

	private static final String ODD = """
			import "standard:parts"
			series Skerry "Odd <names> | and `marks`" {
			  waive cabling/drop-too-long on bus.second because "moves | aft *soon* <b>" until 2031-02-03
			  network bus {
			    backbone of light {
			      tee bow : block4
			      cable 10 m
			      terminator right : endMale
			    }
			    drop bow.1 via 7 m of light to first : instrumentDisplay
			    drop bow.2 via 8 m of light to second : instrumentDisplay
			  }
			}
			""";

	private static CheckReport check(Map<String, String> texts) {
		return Checker.create().check(CheckRequest.ofAll(Snapshot.of(texts), DAY));
	}

	private static CheckReport example(String name) throws IOException {
		return Checker.create().check(CheckRequest.ofAll(Snapshot.ofFolder(Path.of("..", "hullwright.examples", "examples", name)), DAY));
	}

	static List<CheckReport> reports() throws IOException {
		return List.of(example("faulty"), example("harbour-pilot"), example("faulty-text"), check(Map.of("boats/my boat.hull", ODD)),
				check(Map.of("boat.hull", ODD, "yard.hull", "profile Yard from standard { cabling/backbone-too-long off }")), check(Map.of()));
	}

	private static JsonObject sarif(CheckReport report) {
		return JsonParser.parseString(SarifReport.of(List.of(new ProjectReport("x", report)), "0.1.0", Map.of("x", "yards/north"))).getAsJsonObject();
	}

	private static JsonObject run(CheckReport report) {
		return sarif(report).getAsJsonArray("runs").get(0).getAsJsonObject();
	}

	@ParameterizedTest
	@MethodSource("reports")
	void sarifFollowsItsPublishedSchema(CheckReport report) throws IOException {
		assertTrue(Files.exists(SCHEMA), "the schema is not there; fetch it: (cd releng/open-data && npm ci --ignore-scripts)");
		Set<String> violations = JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(Files.readString(SCHEMA))
				.validate(sarif(report).toString(), InputFormat.JSON).stream().map(Object::toString).collect(Collectors.toSet());
		assertEquals(Set.of(), violations);
	}

	@Test
	void theSchemaRefusesWhatIsNoSarif() throws IOException {
		String wrong = sarif(example("faulty")).toString().replace("\"level\":\"error\"", "\"level\":\"grave\"");
		assertFalse(JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(Files.readString(SCHEMA)).validate(wrong, InputFormat.JSON).isEmpty());
	}

	@ParameterizedTest
	@MethodSource("reports")
	void everyFormatTellsTheSameCounts(CheckReport report) throws Exception {
		JsonObject counts = JsonParser.parseString(JsonReport.of(List.of(new ProjectReport("x", report)))).getAsJsonObject().getAsJsonArray("projects").get(0)
				.getAsJsonObject().getAsJsonObject("counts");
		List<String> levels = new ArrayList<>();
		int suppressed = 0;
		for (JsonElement result : run(report).getAsJsonArray("results")) {
			if (result.getAsJsonObject().has("suppressions")) {
				suppressed++;
			} else {
				levels.add(result.getAsJsonObject().get("level").getAsString());
			}
		}
		for (Severity severity : Severity.values()) {
			String level = severity == Severity.ADVICE ? "note" : severity.word();
			assertEquals(counts.get(severity.word()).getAsInt(), levels.stream().filter(level::equals).count(), severity.word());
		}
		assertEquals(report.setAside().size(), suppressed);
		String markdown = MarkdownReport.of(List.of(new ProjectReport("x", report)));
		assertEquals(report.findings().size(), markdown.lines().filter(line -> line.matches("\\| \\d* ?\\| (error|warning|advice) \\|.*")).count(), markdown);
		assertEquals(report.setAside().size(), markdown.lines().filter(line -> line.startsWith("- `") && line.contains(" -- ")).count());
		long failures = report.findings().stream().filter(each -> each.finding().severity() != Severity.ADVICE).map(each -> each.finding().rule()).distinct().count();
		assertEquals(String.valueOf(failures), suite(report).getAttribute("failures"));
	}

	@Test
	void sarifKnowsFindingsAgainAndLeadsToTheirPlace() {
		JsonArray results = run(check(Map.of("boats/my boat.hull", ODD))).getAsJsonArray("results");
		JsonArray moved = run(check(Map.of("boats/my boat.hull", "// moved\n\n" + ODD.replace("via 7 m", "via 9 m")))).getAsJsonArray("results");
		assertEquals(fingerprints(results), fingerprints(moved));
		assertEquals(results.size(), new HashSet<>(fingerprints(results)).size(), "none twice");
		JsonObject location = results.get(0).getAsJsonObject().getAsJsonArray("locations").get(0).getAsJsonObject().getAsJsonObject("physicalLocation");
		assertEquals("yards/north/boats/my%20boat.hull", location.getAsJsonObject("artifactLocation").get("uri").getAsString());
		assertEquals("SRCROOT", location.getAsJsonObject("artifactLocation").get("uriBaseId").getAsString());
		assertTrue(location.getAsJsonObject("region").get("startLine").getAsInt() > 1);
	}

	private static List<String> fingerprints(JsonArray results) {
		List<String> fingerprints = new ArrayList<>();
		results.forEach(each -> fingerprints.add(each.getAsJsonObject().getAsJsonObject("partialFingerprints").get("hullwright/v1").getAsString()));
		return fingerprints;
	}

	@Test
	void sarifListsEveryRuleWithItsPage() throws IOException {
		CheckReport report = example("faulty");
		JsonArray rules = run(report).getAsJsonObject("tool").getAsJsonObject("driver").getAsJsonArray("rules");
		assertEquals(report.rules().size(), rules.size());
		for (JsonElement rule : rules) {
			assertTrue(rule.getAsJsonObject().getAsJsonObject("help").get("markdown").getAsString().contains("## Why it matters"), rule.toString());
		}
	}

	@Test
	void whatCouldNotBeCheckedIsNoSuccess() throws IOException {
		CheckReport report = example("faulty-text");
		assertFalse(report.complete());
		JsonObject invocation = run(report).getAsJsonArray("invocations").get(0).getAsJsonObject();
		assertFalse(invocation.get("executionSuccessful").getAsBoolean());
		assertEquals(report.gaps().size(), invocation.getAsJsonArray("toolExecutionNotifications").size());
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

	@Test
	void oddCharactersAreHarmless() throws Exception {
		CheckReport report = check(Map.of("boat.hull", "series Bad\u0001 \"\uD83D\uDEA4 <&\" { \u0002 }"));
		assertTrue(suite(report).getElementsByTagName("testcase").getLength() > 0);
		String markdown = MarkdownReport.of(List.of(new ProjectReport("x", check(Map.of("boat.hull", ODD)))));
		assertTrue(markdown.contains("moves \\| aft \\*soon\\* \\<b\\> (until 2031-02-03)"), markdown);
	}
}
