/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.report.ProjectReport;
import hullwright.report.ProjectSources;
import hullwright.report.SarifReport;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * SARIF of real checks against the published schema, with a validator that is not ours, and against what the text of the standard
 * (OASIS, SARIF 2.1.0 with errata 01) asks beyond it. The schema is that of the npm package @microsoft/jest-sarif (MIT), which
 * {@code releng/open-data} pins; the validator is networknt's.
 */
class SarifReportTest {

	private static final Path SCHEMA = Path.of("..", "..", "releng", "open-data", "node_modules", "@microsoft", "jest-sarif", "lib", "schemas",
			"sarif-2.1.0-rtm.5.json");

	private static final LocalDate DAY = LocalDate.of(2030, 1, 1);

	private static final String BOAT = ReportedBoat.text("Invented", "moves aft");

	private static final String OFF = "profile Yard from standard { cabling/backbone-too-long off }";

	/** A project and what a check found in it. */
	private record Checked(Map<String, String> texts, CheckReport report) {

		JsonObject log() {
			return JsonParser.parseString(SarifReport.of(List.of(new ProjectReport("x", report)), "0.1.0", Map.of("x", new ProjectSources("yards/north", texts))))
					.getAsJsonObject();
		}

		JsonObject run() {
			return log().getAsJsonArray("runs").get(0).getAsJsonObject();
		}

		List<JsonObject> results() {
			return objects(run().getAsJsonArray("results"));
		}

		Checked with(List<ReportedFinding> findings, List<RuleRun> rules) {
			return new Checked(texts, new CheckReport(report.asOf(), findings, report.setAside(), report.gaps(), rules, report.series(), report.files(),
					report.baseline()));
		}
	}

	private static List<JsonObject> objects(Iterable<JsonElement> list) {
		return StreamSupport.stream(list.spliterator(), false).map(JsonElement::getAsJsonObject).toList();
	}

	private static Checked check(Snapshot snapshot) {
		Map<String, String> texts = new HashMap<>();
		snapshot.files().keySet().forEach(file -> snapshot.text(file).ifPresent(text -> texts.put(file, text)));
		return new Checked(texts, Checker.create().check(CheckRequest.ofAll(snapshot, DAY)));
	}

	private static Checked check(String file, String text) {
		return check(Snapshot.of(Map.of(file, text)));
	}

	private static Checked example(String name) throws IOException {
		return check(Snapshot.ofFolder(Path.of("..", "hullwright.examples", "examples", name)));
	}

	static List<Checked> projects() throws IOException {
		return List.of(example("faulty"), example("harbour-pilot"), example("faulty-text"), check("boats/my boat.hull", BOAT),
				check("marked.hull", "\uFEFF" + BOAT), check("lines.hull", BOAT.replace("\n", "\r\n")), check("broken.hull", "\uFEFFseries {\r\n}}"),
				check(Snapshot.of(Map.of("boat.hull", BOAT, "yard.hull", OFF))), check(Snapshot.of(Map.of("empty.hull", ""))), check(Snapshot.of(Map.of())));
	}

	private static Set<String> violations(String json) throws IOException {
		if (!Files.exists(SCHEMA)) {
			String advice = "the schema is not there; fetch it: (cd releng/open-data && npm ci --ignore-scripts)";
			if (System.getenv("CI") != null) {
				fail(advice);
			}
			abort(advice);
		}
		return JsonSchemaFactory.getInstance(VersionFlag.V4).getSchema(Files.readString(SCHEMA)).validate(json, InputFormat.JSON).stream()
				.map(Object::toString).collect(Collectors.toSet());
	}

	@ParameterizedTest
	@MethodSource("projects")
	void followsThePublishedSchema(Checked project) throws IOException {
		assertEquals(Set.of(), violations(project.log().toString()));
	}

	@Test
	void theSchemaRefusesWhatIsNone() throws IOException {
		String json = example("faulty").log().toString();
		assertFalse(violations(json.replace("\"level\":\"error\"", "\"level\":\"grave\"")).isEmpty());
		assertFalse(violations(json.replace("\"analysisTarget\"", "\"target\"")).isEmpty());
		assertFalse(violations(json.replace("\"startLine\":", "\"startLine\":-")).isEmpty());
	}

	/** Section 3.30.2: both ways of telling a region must mean the same characters, and a byte order mark counts in neither. */
	@ParameterizedTest
	@MethodSource("projects")
	void bothWaysOfTellingARegionAgree(Checked project) {
		for (JsonObject result : project.results()) {
			for (JsonObject location : objects(result.getAsJsonArray("locations"))) {
				JsonObject place = location.getAsJsonObject("physicalLocation");
				String uri = place.getAsJsonObject("artifactLocation").get("uri").getAsString().replace("%20", " ");
				String text = project.texts().get(uri.replaceFirst("^yards/north/", "")).replace("\uFEFF", "");
				JsonObject region = place.getAsJsonObject("region");
				int offset = region.get("charOffset").getAsInt();
				String byOffset = text.substring(offset, offset + region.get("charLength").getAsInt());
				assertEquals(byOffset, between(text, region.get("startLine").getAsInt(), region.get("startColumn").getAsInt(),
						region.get("endLine").getAsInt(), region.get("endColumn").getAsInt()), result.toString());
			}
		}
	}

	private static String between(String text, int startLine, int startColumn, int endLine, int endColumn) {
		String[] lines = text.split("(?<=\n)", -1);
		StringBuilder region = new StringBuilder();
		for (int line = startLine; line <= endLine; line++) {
			String content = lines[line - 1];
			region.append(content, line == startLine ? startColumn - 1 : 0, line == endLine ? endColumn - 1 : content.length());
		}
		return region.toString();
	}

	@Test
	void leadsToTheElementInItsFile() {
		Checked project = check("boats/my boat \u00e5%.hull", "\uFEFF" + BOAT);
		JsonObject drop = project.results().stream().filter(each -> each.get("ruleId").getAsString().equals("cabling/drop-too-long")).findFirst().orElseThrow();
		JsonObject location = objects(drop.getAsJsonArray("locations")).get(0);
		JsonObject address = location.getAsJsonObject("physicalLocation").getAsJsonObject("artifactLocation");
		assertEquals("yards/north/boats/my%20boat%20%C3%A5%25.hull", address.get("uri").getAsString());
		assertEquals("%SRCROOT%", address.get("uriBaseId").getAsString());
		JsonObject artifact = objects(project.run().getAsJsonArray("artifacts")).get(address.get("index").getAsInt());
		assertEquals(address.get("uri"), artifact.getAsJsonObject("location").get("uri"));
		assertEquals(64, artifact.getAsJsonObject("hashes").get("sha-256").getAsString().length());
		assertEquals("Skerry.bus.first", objects(location.getAsJsonArray("logicalLocations")).get(0).get("fullyQualifiedName").getAsString());
		assertEquals(7, drop.getAsJsonObject("properties").getAsJsonObject("values").get("length_m").getAsInt());
	}

	@Test
	void knowsFindingsAgainWhereverTheyStandAndHoweverBadTheyAre() {
		List<String> before = fingerprints(check("boat.hull", BOAT));
		assertEquals(before, fingerprints(check("boat.hull", "// moved\n\n" + BOAT.replace("via 7 m", "via 9 m"))));
		assertEquals(before, fingerprints(check("boat.hull", BOAT.replace("until 2031-02-03", ""))));
		String twice = "catalog Kit {\n  tee t { }\n  tee t { }\n}\n";
		assertEquals(fingerprints(check("kit.hull", twice)), fingerprints(check("kit.hull", "\n\n" + twice)), "the message names a line");
	}

	@ParameterizedTest
	@MethodSource("projects")
	void noTwoResultsOfARunAreTakenForOne(Checked project) {
		List<String> fingerprints = fingerprints(project);
		assertEquals(fingerprints.size(), new HashSet<>(fingerprints).size(), fingerprints.toString());
	}

	@Test
	void findingsThatDifferInSeverityOnlyAreToldApart() throws IOException {
		Checked faulty = example("faulty");
		ReportedFinding first = faulty.report().findings().get(0);
		Finding error = first.finding();
		Finding advice = new Finding(error.rule(), Severity.ADVICE, error.origin(), error.key(), error.template(), error.values(), error.source(), List.of(),
				Set.of());
		List<String> alone = fingerprints(faulty.with(List.of(first), faulty.report().rules()));
		List<String> both = fingerprints(faulty.with(List.of(first, new ReportedFinding(advice, first.occurrence())), faulty.report().rules()));
		assertEquals(List.of(alone.get(0) + "|error", alone.get(0) + "|advice"), both);
	}

	private static List<String> fingerprints(Checked project) {
		List<String> fingerprints = new ArrayList<>();
		project.results().forEach(each -> fingerprints.add(each.getAsJsonObject("partialFingerprints").get("ruleElementKey/v1").getAsString()));
		return fingerprints;
	}

	@Test
	void listsEveryRuleWithItsPageAndEachKindOfProblem() throws IOException {
		for (Checked project : projects()) {
			List<JsonObject> rules = objects(project.run().getAsJsonObject("tool").getAsJsonObject("driver").getAsJsonArray("rules"));
			for (JsonObject rule : rules.subList(0, project.report().rules().size())) {
				assertTrue(rule.getAsJsonObject("help").get("markdown").getAsString().contains("## Why it matters"), rule.toString());
				String introduction = rule.getAsJsonObject("fullDescription").get("text").getAsString();
				assertTrue(introduction.endsWith(".") && !introduction.contains("\n") && !introduction.contains("{"), introduction);
			}
			project.results().forEach(result -> assertEquals(result.get("ruleId"), rules.get(result.get("ruleIndex").getAsInt()).get("id")));
		}
	}

	@Test
	void tellsWhichRulesAreOff() {
		Checked project = check(Snapshot.of(Map.of("boat.hull", BOAT, "yard.hull", OFF)));
		List<JsonObject> overrides = objects(objects(project.run().getAsJsonArray("invocations")).get(0).getAsJsonArray("ruleConfigurationOverrides"));
		assertEquals(List.of("cabling/backbone-too-long", "data/never-used"),
				overrides.stream().map(each -> each.getAsJsonObject("descriptor").get("id").getAsString()).sorted().toList(),
				"what the profile switches off, and what is off unless one asks for it");
		overrides.forEach(each -> assertFalse(each.getAsJsonObject("configuration").get("enabled").getAsBoolean()));
	}

	@Test
	void whatCouldNotBeCheckedIsNoSuccess() throws IOException {
		Checked broken = example("faulty-text");
		JsonObject invocation = objects(broken.run().getAsJsonArray("invocations")).get(0);
		assertFalse(invocation.get("executionSuccessful").getAsBoolean());
		assertEquals(broken.report().gaps().size(), invocation.getAsJsonArray("toolExecutionNotifications").size());
		assertTrue(objects(example("faulty").run().getAsJsonArray("invocations")).get(0).get("executionSuccessful").getAsBoolean());
	}

	@Test
	void aRuleThatFailedIsNoSuccess() throws IOException {
		Checked faulty = example("faulty");
		RuleRun rule = faulty.report().rules().get(1);
		List<RuleRun> rules = new ArrayList<>(faulty.report().rules());
		rules.set(1, new RuleRun(rule.description(), rule.contributor(), RuleRun.State.FAILED, Optional.of("it took longer than {10} s"), rule.page()));
		Checked project = faulty.with(faulty.report().findings(), rules);
		JsonObject invocation = objects(project.run().getAsJsonArray("invocations")).get(0);
		assertFalse(invocation.get("executionSuccessful").getAsBoolean());
		JsonObject notification = objects(invocation.getAsJsonArray("toolExecutionNotifications")).get(0);
		assertEquals(rule.rule(), notification.getAsJsonObject("associatedRule").get("id").getAsString());
		assertEquals("rule " + rule.rule() + " failed: it took longer than {{10}} s", notification.getAsJsonObject("message").get("text").getAsString(),
				"a brace would begin a placeholder (section 3.11.5)");
	}

	/** Section 3.27.23: either all results say what is suppressed, or none does. */
	@Test
	void whatWasSetAsideSaysWhy() {
		Checked project = check("boat.hull", BOAT);
		List<JsonObject> waived = project.results().stream().filter(each -> each.getAsJsonArray("suppressions").size() > 0).toList();
		assertEquals(1, waived.size());
		JsonObject suppression = objects(waived.get(0).getAsJsonArray("suppressions")).get(0);
		assertEquals("accepted", suppression.get("status").getAsString());
		assertEquals("waived until 2031-02-03: moves aft", suppression.get("justification").getAsString());
		assertEquals(3, suppression.getAsJsonObject("location").getAsJsonObject("physicalLocation").getAsJsonObject("region").get("startLine").getAsInt());
	}
}
