/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.JsonObject;
import hullwright.network.Origin;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.BaselineUsed;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.Occurrence;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
import hullwright.rules.report.SeriesCoverage;
import hullwright.rules.report.SetAside;
import hullwright.rules.report.SourceFile;
import java.util.List;

/**
 * A report for programs to read, after the JSON schema beside this class ({@code report-1.schema.json}). Quantities are
 * numbers of SI units, with the unit in the key: {@code "length_m": 6.8}.
 */
public final class JsonReport {

	/** The version of the format; it changes when a reader of the old one would stumble. */
	public static final int VERSION = 1;

	private JsonReport() {
	}

	/** Writes the reports on several projects as one document, with a line end at its end. */
	public static String of(List<ProjectReport> projects) {
		JsonObject document = new JsonObject();
		document.addProperty("format", "hullwright-report");
		document.addProperty("version", VERSION);
		document.addProperty("complete", projects.stream().allMatch(project -> project.report().complete()));
		document.add("projects", JsonText.array(projects, JsonReport::project));
		return JsonText.of(document);
	}

	private static JsonObject project(ProjectReport project) {
		CheckReport report = project.report();
		JsonObject json = new JsonObject();
		json.addProperty("project", project.name());
		json.addProperty("asOf", report.asOf().toString());
		json.addProperty("complete", report.complete());
		json.add("gaps", JsonText.array(report.gaps()));
		json.add("counts", counts(report));
		json.add("findings", JsonText.array(report.findings(), JsonReport::finding));
		json.add("setAside", JsonText.array(report.setAside(), JsonReport::setAside));
		json.add("series", JsonText.array(report.series(), JsonReport::series));
		json.add("rules", JsonText.array(report.rules(), JsonReport::rule));
		json.add("files", JsonText.array(report.files(), JsonReport::file));
		report.baseline().ifPresent(baseline -> json.add("baseline", baseline(baseline)));
		return json;
	}

	/** What the findings were held against. */
	static JsonObject baseline(BaselineUsed baseline) {
		JsonObject used = new JsonObject();
		used.addProperty("file", baseline.file());
		used.addProperty("sha256", baseline.sha256());
		used.addProperty("entries", baseline.entries());
		used.addProperty("tolerance_share", baseline.tolerance());
		return used;
	}

	/** How many findings there are of each severity, and how many do not count. */
	static JsonObject counts(CheckReport report) {
		JsonObject counts = new JsonObject();
		for (Severity severity : Severity.values()) {
			counts.addProperty(severity.word(), report.count(severity));
		}
		counts.addProperty("waived", report.countSetAside(SetAside.Waived.class));
		counts.addProperty("inBaseline", report.countSetAside(SetAside.InBaseline.class));
		counts.addProperty("silenced", report.countSetAside(SetAside.Silenced.class));
		return counts;
	}

	private static JsonObject finding(ReportedFinding reported) {
		Finding finding = reported.finding();
		JsonObject json = new JsonObject();
		json.addProperty("rule", finding.rule());
		json.addProperty("severity", finding.severity().word());
		json.addProperty("element", finding.element());
		json.addProperty("key", finding.key());
		json.addProperty("message", finding.message());
		json.addProperty("source", finding.source());
		json.add("place", place(finding.origin()));
		JsonObject values = new JsonObject();
		finding.values().forEach((name, value) -> JsonValue.add(values, name, value));
		json.add("values", values);
		json.add("occurs", occurrence(reported.occurrence()));
		json.add("fixes", JsonText.array(finding.fixes(), fix -> {
			JsonObject each = new JsonObject();
			each.addProperty("title", fix.title());
			each.addProperty("reach", JsonText.word(fix.reach()));
			return each;
		}));
		return json;
	}

	private static JsonObject setAside(SetAside aside) {
		JsonObject json = new JsonObject();
		if (aside.why() instanceof SetAside.Waived waived) {
			json.addProperty("why", "waived");
			json.addProperty("reason", waived.reason());
			waived.until().ifPresent(last -> json.addProperty("until", last.toString()));
			json.add("waiver", place(waived.place()));
		} else if (aside.why() instanceof SetAside.Silenced silenced) {
			json.addProperty("why", "silenced");
			json.addProperty("byRule", silenced.rule());
			json.addProperty("byElement", silenced.element());
		} else {
			json.addProperty("why", "in-baseline");
		}
		json.add("finding", finding(aside.finding()));
		return json;
	}

	private static JsonObject place(Origin origin) {
		JsonObject json = new JsonObject();
		json.addProperty("file", origin.file());
		json.addProperty("line", origin.line());
		json.addProperty("column", origin.column());
		json.addProperty("offset", origin.offset());
		json.addProperty("length", origin.length());
		return json;
	}

	/** The boats that a finding occurs on. */
	static JsonObject occurrence(Occurrence occurrence) {
		JsonObject json = new JsonObject();
		json.addProperty("series", occurrence.series());
		json.addProperty("onAll", occurrence.onAll());
		json.addProperty("condition", occurrence.condition());
		json.add("hulls", JsonText.array(occurrence.hulls()));
		json.addProperty("boats", occurrence.boats());
		return json;
	}

	/** How much of a series was checked. */
	static JsonObject series(SeriesCoverage series) {
		JsonObject json = new JsonObject();
		json.addProperty("series", series.series());
		json.addProperty("devices", series.devices());
		json.addProperty("combinations", series.combinations());
		json.addProperty("allCombinations", series.allCombinations());
		json.addProperty("hulls", series.hulls());
		json.addProperty("allHulls", series.allHulls());
		return json;
	}

	private static JsonObject rule(RuleRun rule) {
		JsonObject json = new JsonObject();
		json.addProperty("rule", rule.rule());
		json.addProperty("contributor", rule.contributor());
		json.addProperty("state", JsonText.word(rule.state()));
		json.addProperty("reason", rule.reason().orElse(""));
		return json;
	}

	private static JsonObject file(SourceFile file) {
		JsonObject json = new JsonObject();
		json.addProperty("file", file.file());
		json.addProperty("role", file.role());
		json.addProperty("sha256", file.sha256());
		return json;
	}
}
