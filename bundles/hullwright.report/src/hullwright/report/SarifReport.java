/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import hullwright.network.Origin;
import hullwright.rules.Band;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
import hullwright.rules.report.SetAside;
import hullwright.rules.report.SourceFile;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reports as SARIF 2.1.0 (OASIS Standard, Static Analysis Results Interchange Format), one run for each project, for code hosts and
 * other programs that show findings beside the text. Places are relative to a root that the caller names.
 */
public final class SarifReport {

	private static final String SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

	private static final String ROOT = "SRCROOT";

	private final ProjectReport project;
	private final String below;
	private final Map<String, Integer> ruleNumbers = new HashMap<>();
	private final Map<String, Integer> fingerprints = new HashMap<>();

	private SarifReport(ProjectReport project, String below) {
		this.project = project;
		this.below = below;
	}

	/**
	 * Writes the reports on several projects as one log, with a line end at its end.
	 *
	 * @param version the version of the program
	 * @param below by the folder of a project as its report names it, the path that leads to it from the root of the repository, with
	 *        '/' between folders; empty for the root itself
	 */
	public static String of(List<ProjectReport> projects, String version, Map<String, String> below) {
		JsonObject log = new JsonObject();
		log.addProperty("$schema", SCHEMA);
		log.addProperty("version", "2.1.0");
		JsonArray runs = new JsonArray();
		projects.forEach(each -> runs.add(new SarifReport(each, below.getOrDefault(each.project(), each.project())).run(version)));
		log.add("runs", runs);
		return JsonText.of(log);
	}

	private JsonObject run(String version) {
		CheckReport report = project.report();
		JsonObject run = new JsonObject();
		JsonObject driver = new JsonObject();
		driver.addProperty("name", "Hullwright");
		driver.addProperty("semanticVersion", version);
		JsonArray rules = new JsonArray();
		report.rules().forEach(each -> {
			ruleNumbers.put(each.rule(), rules.size());
			rules.add(rule(each));
		});
		driver.add("rules", rules);
		JsonObject tool = new JsonObject();
		tool.add("driver", driver);
		run.add("tool", tool);
		run.add("automationDetails", property("id", "hullwright/" + (below.isEmpty() ? "" : below + "/")));
		run.addProperty("columnKind", "utf16CodeUnits");
		JsonObject bases = new JsonObject();
		bases.add(ROOT, described("The root of the repository"));
		run.add("originalUriBaseIds", bases);
		run.add("invocations", list(invocation(report)));
		run.add("artifacts", artifacts(report));
		JsonArray results = new JsonArray();
		report.findings().forEach(each -> results.add(result(each)));
		report.setAside().forEach(each -> results.add(suppressed(each)));
		run.add("results", results);
		run.add("properties", properties(report));
		return run;
	}

	private static JsonObject rule(RuleRun run) {
		JsonObject rule = new JsonObject();
		rule.addProperty("id", run.rule());
		rule.addProperty("name", run.description().title());
		rule.add("shortDescription", text(run.description().title()));
		rule.add("fullDescription", text(run.description().message()));
		JsonObject help = text(run.page().orElse(run.description().title()));
		run.page().ifPresent(page -> help.addProperty("markdown", page));
		rule.add("help", help);
		JsonObject configuration = new JsonObject();
		configuration.addProperty("enabled", run.state() != RuleRun.State.OFF);
		configuration.addProperty("level", level(run.description().severity()));
		rule.add("defaultConfiguration", configuration);
		JsonObject properties = new JsonObject();
		properties.addProperty("contributor", run.contributor());
		properties.addProperty("state", JsonText.word(run.state()));
		JsonArray bands = new JsonArray();
		for (Band band : run.description().bands()) {
			bands.add(band.severity().word() + " above " + band.limit());
		}
		properties.add("limits", bands);
		rule.add("properties", properties);
		return rule;
	}

	private JsonObject result(ReportedFinding reported) {
		Finding finding = reported.finding();
		JsonObject result = new JsonObject();
		result.addProperty("ruleId", finding.rule());
		if (ruleNumbers.containsKey(finding.rule())) {
			result.addProperty("ruleIndex", ruleNumbers.get(finding.rule()));
		}
		result.addProperty("level", level(finding.severity()));
		String boats = OccurrenceText.of(reported.occurrence());
		result.add("message", text(finding.message() + (boats.isEmpty() ? "" : " (" + boats + ")")));
		result.add("locations", list(location(finding.origin())));
		result.add("partialFingerprints", property("hullwright/v1", fingerprint(finding)));
		JsonObject properties = new JsonObject();
		JsonObject values = new JsonObject();
		finding.values().forEach((name, value) -> JsonValue.add(values, name, value));
		properties.add("values", values);
		properties.addProperty("source", finding.source());
		properties.addProperty("boats", reported.occurrence().boats());
		result.add("properties", properties);
		return result;
	}

	/** Rule, element and key know a finding again, wherever it stands; bands of one rule on different boats differ in severity. */
	private String fingerprint(Finding finding) {
		String identity = String.join("|", finding.rule(), finding.element(), finding.key(), finding.severity().word());
		int times = fingerprints.merge(identity, 1, Integer::sum);
		return times == 1 ? identity : identity + "|" + times;
	}

	private JsonObject suppressed(SetAside aside) {
		JsonObject result = result(aside.finding());
		JsonObject suppression = new JsonObject();
		suppression.addProperty("kind", aside.why() instanceof SetAside.Waived ? "inSource" : "external");
		suppression.addProperty("status", "accepted");
		if (aside.why() instanceof SetAside.Waived waived) {
			suppression.addProperty("justification", "waived: " + waived.reason() + waived.until().map(last -> " (until " + last + ")").orElse(""));
			suppression.add("location", location(waived.place()));
		} else if (aside.why() instanceof SetAside.Silenced silenced) {
			suppression.addProperty("justification", "explained by " + silenced.rule() + " on " + silenced.element());
		} else {
			suppression.addProperty("justification", "in the baseline");
		}
		result.add("suppressions", list(suppression));
		return result;
	}

	private JsonObject location(Origin origin) {
		JsonObject location = new JsonObject();
		if (!origin.file().isEmpty()) {
			JsonObject physical = new JsonObject();
			physical.add("artifactLocation", artifact(origin.file()));
			if (origin.line() > 0) {
				JsonObject region = new JsonObject();
				region.addProperty("startLine", origin.line());
				region.addProperty("startColumn", Math.max(1, origin.column()));
				region.addProperty("charOffset", origin.offset());
				region.addProperty("charLength", origin.length());
				physical.add("region", region);
			}
			location.add("physicalLocation", physical);
		}
		location.add("logicalLocations", list(property("fullyQualifiedName", origin.element())));
		return location;
	}

	private JsonObject artifact(String file) {
		JsonObject artifact = new JsonObject();
		if (file.startsWith("standard:")) {
			artifact.addProperty("uri", file);
			return artifact;
		}
		if (file.startsWith("user:")) {
			artifact.addProperty("uri", "user:" + encoded(file.substring("user:".length())));
			return artifact;
		}
		artifact.addProperty("uri", encoded(below.isEmpty() ? file : below + "/" + file));
		artifact.addProperty("uriBaseId", ROOT);
		return artifact;
	}

	private static String encoded(String path) {
		try {
			return new URI(null, null, "./" + path, null).toASCIIString().substring(2);
		} catch (URISyntaxException e) {
			throw new IllegalArgumentException("no path can be " + path, e);
		}
	}

	private JsonArray artifacts(CheckReport report) {
		JsonArray artifacts = new JsonArray();
		for (SourceFile file : report.files()) {
			JsonObject artifact = new JsonObject();
			artifact.add("location", artifact(file.file()));
			artifact.add("hashes", property("sha-256", file.sha256()));
			artifact.add("description", text(file.role()));
			artifacts.add(artifact);
		}
		return artifacts;
	}

	private static JsonObject invocation(CheckReport report) {
		JsonObject invocation = new JsonObject();
		invocation.addProperty("executionSuccessful", report.complete());
		JsonArray notifications = new JsonArray();
		List<String> notes = new ArrayList<>(report.gaps());
		report.rules().stream().filter(each -> each.state() == RuleRun.State.FAILED)
				.forEach(each -> notes.add("rule " + each.rule() + " failed: " + each.reason().orElse("")));
		for (String note : notes) {
			JsonObject notification = new JsonObject();
			notification.addProperty("level", "error");
			notification.add("message", text(note));
			notifications.add(notification);
		}
		invocation.add("toolExecutionNotifications", notifications);
		return invocation;
	}

	private static JsonObject properties(CheckReport report) {
		JsonObject properties = new JsonObject();
		properties.addProperty("asOf", report.asOf().toString());
		properties.add("counts", JsonReport.counts(report));
		report.baseline().ifPresent(baseline -> properties.addProperty("baseline", baseline.file() + ", sha-256 " + baseline.sha256()));
		JsonArray series = new JsonArray();
		report.series().forEach(each -> series.add(TextReport.coverage(each)));
		properties.add("checked", series);
		return properties;
	}

	private static String level(Severity severity) {
		return switch (severity) {
		case ERROR -> "error";
		case WARNING -> "warning";
		case ADVICE -> "note";
		};
	}

	private static JsonObject text(String text) {
		return property("text", text);
	}

	private static JsonObject described(String text) {
		JsonObject described = new JsonObject();
		described.add("description", text(text));
		return described;
	}

	private static JsonObject property(String name, String value) {
		JsonObject json = new JsonObject();
		json.addProperty(name, value);
		return json;
	}

	private static JsonArray list(JsonObject one) {
		JsonArray list = new JsonArray();
		list.add(one);
		return list;
	}
}
