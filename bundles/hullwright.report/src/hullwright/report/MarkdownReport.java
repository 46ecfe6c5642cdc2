/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import hullwright.rules.Finding;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.SetAside;
import java.util.LinkedHashMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Reports as Markdown, for the comment on a change or the minutes of a review.
 */
public final class MarkdownReport {

	private final ProjectReport project;
	private final StringBuilder text = new StringBuilder();

	private MarkdownReport(ProjectReport project) {
		this.project = project;
	}

	/** Writes the reports on several projects one after the other. */
	public static String of(List<ProjectReport> projects) {
		return projects.stream().map(each -> new MarkdownReport(each).write()).collect(Collectors.joining("\n"));
	}

	private String write() {
		CheckReport report = project.report();
		line("# Check of " + code(project.name()) + ", as of " + report.asOf());
		line("");
		String counts = TextReport.counts(report);
		line(counts.isEmpty() ? report.complete() ? "No findings." : "No findings in what could be checked." : "**" + counts + "**");
		String aside = TextReport.setAside(report);
		if (!aside.isEmpty()) {
			line(aside);
		}
		line("");
		report.gaps().forEach(gap -> line("- **Not checked:** " + escaped(gap) + "."));
		report.series().forEach(each -> line("- " + escaped(TextReport.coverage(each))));
		line("- " + escaped(TextReport.rules(report)));
		Map<String, List<ReportedFinding>> byFile = new LinkedHashMap<>();
		report.findings().forEach(each -> byFile.computeIfAbsent(each.finding().origin().file(), none -> new ArrayList<>()).add(each));
		byFile.forEach(this::findings);
		setAside(report.setAside());
		files(report);
		return text.toString();
	}

	private void findings(String file, List<ReportedFinding> findings) {
		line("");
		line("## " + (file.isEmpty() ? "Without a place" : code(project.pathOf(file))));
		line("");
		line("| line | | finding | boats | rule | source |");
		line("| ---: | --- | --- | --- | --- | --- |");
		for (ReportedFinding each : findings) {
			Finding finding = each.finding();
			line("| " + (finding.origin().line() == 0 ? "" : finding.origin().line()) + " | " + finding.severity().word() + " | " + escaped(finding.message()) + "<br>"
					+ code(finding.element()) + " | " + escaped(OccurrenceText.of(each.occurrence())) + " | " + code(finding.rule()) + " | "
					+ escaped(finding.source()) + " |");
		}
	}

	private void setAside(List<SetAside> aside) {
		if (aside.isEmpty()) {
			return;
		}
		line("");
		line("## Not counted");
		line("");
		for (SetAside each : aside) {
			Finding finding = each.finding().finding();
			line("- " + code(finding.rule()) + " on " + code(finding.element()) + ": " + escaped(finding.message()) + " -- " + escaped(why(each.why())));
		}
	}

	private static String why(SetAside.Why why) {
		if (why instanceof SetAside.Waived waived) {
			return "waived: " + waived.reason() + waived.until().map(last -> " (until " + last + ")").orElse("");
		} else if (why instanceof SetAside.Silenced silenced) {
			return "explained by " + silenced.rule() + " on " + silenced.element();
		}
		return "in the baseline";
	}

	private void files(CheckReport report) {
		line("");
		line("<details><summary>Read for this</summary>");
		line("");
		line("| file | is | SHA-256 |");
		line("| --- | --- | --- |");
		report.files().forEach(each -> line("| " + code(each.file()) + " | " + escaped(each.role()) + " | " + code(each.sha256()) + " |"));
		report.baseline().ifPresent(each -> line("| " + code(each.file()) + " | baseline | " + code(each.sha256()) + " |"));
		line("");
		line("</details>");
	}

	/** Text in which nothing is taken for markup. */
	private static String escaped(String text) {
		return text.replaceAll("([\\\\`*_{}\\[\\]<>#|~])", "\\\\$1").replaceAll("\\s*\\R\\s*", " ");
	}

	/** Text as it stands, in a table, too. */
	private static String code(String text) {
		String clean = text.replaceAll("\\R", " ").replace("|", "\\|");
		return clean.contains("`") ? "`` " + clean + " ``" : "`" + clean + "`";
	}

	private void line(String line) {
		text.append(line).append('\n');
	}
}
