/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import static hullwright.report.MarkdownText.code;
import static hullwright.report.MarkdownText.codeInCell;
import static hullwright.report.MarkdownText.escaped;
import static hullwright.report.MarkdownText.row;

import hullwright.network.Origin;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
import hullwright.rules.report.SetAside;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Reports as Markdown with tables, for the comment on a change or the minutes of a review.
 */
public final class MarkdownReport {

	private final ProjectReport project;
	private final CheckReport report;
	private final StringBuilder text = new StringBuilder();

	private MarkdownReport(ProjectReport project) {
		this.project = project;
		report = project.report();
	}

	/** Writes the reports on several projects one after the other. */
	public static String of(List<ProjectReport> projects) {
		return projects.stream().map(each -> new MarkdownReport(each).write()).collect(Collectors.joining("\n"));
	}

	private String write() {
		line("# Check of " + code(project.name()) + ", as of " + report.asOf());
		line("");
		String counts = TextReport.counts(report);
		line(counts.isEmpty() ? report.complete() ? "No findings." : "No findings in what could be checked." : "**" + counts + "**");
		line("");
		counts();
		checked();
		Map<String, List<ReportedFinding>> byFile = new LinkedHashMap<>();
		report.findings().forEach(each -> byFile.computeIfAbsent(each.finding().origin().file(), none -> new ArrayList<>()).add(each));
		byFile.forEach(this::findings);
		setAside();
		files();
		return text.toString();
	}

	private void counts() {
		line(row("errors", "warnings", "advice", "waived", "in the baseline", "explained by others"));
		line(row("---:", "---:", "---:", "---:", "---:", "---:"));
		line(row(count(report.count(Severity.ERROR)), count(report.count(Severity.WARNING)), count(report.count(Severity.ADVICE)),
				count(report.countSetAside(SetAside.Waived.class)), count(report.countSetAside(SetAside.InBaseline.class)),
				count(report.countSetAside(SetAside.Silenced.class))));
		line("");
	}

	private static String count(long count) {
		return String.valueOf(count);
	}

	private void checked() {
		report.gaps().forEach(gap -> line("- **Not checked:** " + escaped(gap) + "."));
		report.series().forEach(each -> line("- " + escaped(TextReport.coverage(each))));
		line("- " + escaped(TextReport.rules(report)));
		report.rules().stream().filter(each -> each.state() == RuleRun.State.FAILED)
				.forEach(each -> line("- Rule " + code(each.rule()) + " failed" + each.reason().map(reason -> ": " + escaped(reason)).orElse("") + "."));
	}

	private void findings(String file, List<ReportedFinding> findings) {
		line("");
		line("## " + (file.isEmpty() ? "Without a place" : code(project.pathOf(file))));
		line("");
		line(row("place", "severity", "finding", "boats", "rule", "source"));
		line(row("---:", "---", "---", "---", "---", "---"));
		for (ReportedFinding each : findings) {
			Finding finding = each.finding();
			String element = finding.element().equals(file) ? "" : "<br>" + codeInCell(finding.element());
			line(row(place(finding.origin()), finding.severity().word(), escaped(finding.message()) + element, escaped(OccurrenceText.of(each.occurrence())),
					codeInCell(finding.rule()), escaped(finding.source())));
		}
	}

	private static String place(Origin origin) {
		return origin.line() == 0 ? "" : origin.line() + ":" + origin.column();
	}

	private void setAside() {
		if (report.setAside().isEmpty()) {
			return;
		}
		line("");
		line("## Found, and not counted");
		line("");
		line(row("place", "severity", "finding", "rule", "why it does not count"));
		line(row("---", "---", "---", "---", "---"));
		for (SetAside each : report.setAside()) {
			Finding finding = each.finding().finding();
			line(row(codeInCell(project.placeOf(finding.origin())), finding.severity().word(),
					escaped(finding.message()) + "<br>" + codeInCell(finding.element()), codeInCell(finding.rule()), escaped(SetAsideText.of(each.why()))));
		}
	}

	private void files() {
		line("");
		line("<details><summary>Read for this</summary>");
		line("");
		line(row("file", "is", "SHA-256"));
		line(row("---", "---", "---"));
		report.files().forEach(each -> line(row(codeInCell(each.file()), escaped(each.role()), codeInCell(each.sha256()))));
		report.baseline().ifPresent(each -> line(row(codeInCell(each.file()), "baseline", codeInCell(each.sha256()))));
		line("");
		line("</details>");
	}

	private void line(String line) {
		text.append(line).append('\n');
	}
}
