/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import hullwright.rules.Finding;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
import hullwright.rules.report.SetAside;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reports as SARIF 2.1.0 (OASIS Standard, Static Analysis Results Interchange Format), one run for each project, for code hosts and
 * other programs that show findings beside the text. Places are relative to a root that the caller names.
 *
 * <p>A result has one partial fingerprint, {@code ruleElementKey/v1}: the rule, the element and the key of the finding, never a line
 * or a measured value. Where a run has two such results, since on some boats the severity is another, the severity is added.
 */
public final class SarifReport {

	private static final String SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

	private static final Pattern LINE = Pattern.compile("\\bline \\d+");

	private final CheckReport report;
	private final ProjectSources sources;
	private final SarifRules rules;
	private final SarifPlaces places;
	private final Map<String, Long> sharing;
	private final Map<String, Integer> fingerprints = new HashMap<>();

	private SarifReport(CheckReport report, ProjectSources sources) {
		this.report = report;
		this.sources = sources;
		rules = new SarifRules(report);
		places = new SarifPlaces(sources, report.files());
		sharing = Stream.concat(report.findings().stream(), report.setAside().stream().map(SetAside::finding))
				.collect(Collectors.groupingBy(each -> identity(each.finding()), Collectors.counting()));
	}

	/**
	 * Writes the reports on several projects as one log, with a line end at its end.
	 *
	 * @param version the version of the program, three numbers
	 * @param sources where each project lies and what its files hold, by the folder of the project as its report names it
	 */
	public static String of(List<ProjectReport> projects, String version, Map<String, ProjectSources> sources) {
		JsonObject log = new JsonObject();
		log.addProperty("$schema", SCHEMA);
		log.addProperty("version", "2.1.0");
		JsonArray runs = new JsonArray();
		projects.forEach(each -> runs.add(new SarifReport(each.report(),
				sources.getOrDefault(each.project(), new ProjectSources(each.project(), Map.of()))).run(version)));
		log.add("runs", runs);
		return JsonText.of(log);
	}

	private JsonObject run(String version) {
		JsonObject run = new JsonObject();
		JsonObject driver = SarifText.property("name", "Hullwright");
		driver.addProperty("version", version);
		driver.addProperty("semanticVersion", version);
		driver.add("rules", rules.descriptors());
		JsonObject tool = new JsonObject();
		tool.add("driver", driver);
		run.add("tool", tool);
		run.add("automationDetails", SarifText.property("id", "hullwright/" + sources.pathOf("")));
		run.addProperty("columnKind", "utf16CodeUnits");
		run.addProperty("defaultEncoding", "utf-8");
		JsonObject root = new JsonObject();
		root.add("description", SarifText.message("The root of the repository"));
		JsonObject bases = new JsonObject();
		bases.add(SarifPlaces.ROOT, root);
		run.add("originalUriBaseIds", bases);
		run.add("invocations", SarifText.list(invocation()));
		run.add("artifacts", places.artifacts());
		JsonArray results = new JsonArray();
		report.findings().forEach(each -> results.add(result(each, new JsonArray())));
		report.setAside().forEach(each -> results.add(result(each.finding(), SarifText.list(suppression(each.why())))));
		run.add("results", results);
		run.add("properties", properties());
		return run;
	}

	/** @param suppressions an empty list says that it counts; without a list, nothing would be known (SARIF, section 3.27.23) */
	private JsonObject result(ReportedFinding reported, JsonArray suppressions) {
		Finding finding = reported.finding();
		JsonObject result = new JsonObject();
		result.addProperty("ruleId", finding.rule());
		result.addProperty("ruleIndex", rules.number(finding.rule()));
		result.addProperty("level", SarifText.level(finding.severity()));
		String boats = OccurrenceText.of(reported.occurrence());
		result.add("message", SarifText.message(finding.message() + (boats.isEmpty() ? "" : " (" + boats + ")")));
		JsonObject location = places.location(finding.origin());
		result.add("locations", location.size() == 0 ? new JsonArray() : SarifText.list(location));
		result.add("partialFingerprints", SarifText.property("ruleElementKey/v1", fingerprint(finding)));
		result.add("suppressions", suppressions);
		JsonObject properties = new JsonObject();
		JsonObject values = new JsonObject();
		finding.values().forEach((name, value) -> JsonValue.add(values, name, value));
		properties.add("values", values);
		properties.addProperty("source", finding.source());
		properties.add("occurs", JsonReport.occurrence(reported.occurrence()));
		result.add("properties", properties);
		return result;
	}

	/** The key of a problem of the text is its message, which may name a line; the line is no part of the identity. */
	private static String identity(Finding finding) {
		return String.join("|", finding.rule(), finding.element(), LINE.matcher(finding.key()).replaceAll("line"));
	}

	private String fingerprint(Finding finding) {
		String identity = identity(finding);
		String fingerprint = sharing.get(identity) == 1 ? identity : identity + "|" + finding.severity().word();
		int times = fingerprints.merge(fingerprint, 1, Integer::sum);
		return times == 1 ? fingerprint : fingerprint + "|" + times;
	}

	private JsonObject suppression(SetAside.Why why) {
		JsonObject suppression = new JsonObject();
		suppression.addProperty("kind", why instanceof SetAside.Waived ? "inSource" : "external");
		suppression.addProperty("status", "accepted");
		suppression.addProperty("justification", SetAsideText.of(why));
		if (why instanceof SetAside.Waived waived) {
			suppression.add("location", places.location(waived.place()));
		}
		return suppression;
	}

	private JsonObject invocation() {
		List<RuleRun> failed = report.rules().stream().filter(each -> each.state() == RuleRun.State.FAILED).toList();
		JsonObject invocation = new JsonObject();
		invocation.addProperty("executionSuccessful", report.complete() && failed.isEmpty());
		JsonArray notifications = new JsonArray();
		// a rule that failed is a gap, too, and is told once, with its reason
		report.gaps().stream().filter(gap -> failed.stream().noneMatch(rule -> gap.startsWith("rule " + rule.rule() + " failed")))
				.forEach(gap -> notifications.add(notification(gap)));
		for (RuleRun rule : failed) {
			JsonObject notification = notification("rule " + rule.rule() + " failed" + rule.reason().map(reason -> ": " + reason).orElse(""));
			notification.add("associatedRule", rules.reference(rule.rule()));
			notifications.add(notification);
		}
		invocation.add("toolExecutionNotifications", notifications);
		invocation.add("ruleConfigurationOverrides", rules.overrides());
		return invocation;
	}

	private static JsonObject notification(String text) {
		JsonObject notification = new JsonObject();
		notification.addProperty("level", "error");
		notification.add("message", SarifText.message(text));
		return notification;
	}

	private JsonObject properties() {
		JsonObject properties = new JsonObject();
		properties.addProperty("asOf", report.asOf().toString());
		properties.add("counts", JsonReport.counts(report));
		properties.add("series", JsonText.array(report.series(), JsonReport::series));
		report.baseline().ifPresent(baseline -> properties.add("baseline", JsonReport.baseline(baseline)));
		properties.add("gaps", JsonText.array(report.gaps()));
		return properties;
	}
}
