/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import hullwright.network.Origin;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
import hullwright.rules.report.SeriesCoverage;
import hullwright.rules.report.SetAside;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A report for people to read: each finding with its place, what was measured, the limit and where the limit was read, and
 * at the end what was checked.
 */
public final class TextReport {

	private static final String INDENT = "         ";

	private static final int SHORT_HASH = 12;

	private final boolean coloured;
	private final StringBuilder text = new StringBuilder();

	private TextReport(boolean coloured) {
		this.coloured = coloured;
	}

	/**
	 * Writes the reports on several projects, each under the name of its folder if there are several.
	 *
	 * @param coloured whether the reader sees a terminal with colours
	 * @param details what the reader wants to see beside the findings that count
	 */
	public static String of(List<ProjectReport> projects, boolean coloured, Set<TextDetail> details) {
		return projects.stream()
				.map(project -> (projects.size() > 1 ? Style.PLACE.of("Project " + project.name(), coloured) + "\n\n" : "") + of(project, coloured, details))
				.collect(Collectors.joining("\n"));
	}

	private static String of(ProjectReport project, boolean coloured, Set<TextDetail> details) {
		TextReport writing = new TextReport(coloured);
		project.report().findings().forEach(finding -> writing.finding(project, finding, ""));
		if (details.contains(TextDetail.SET_ASIDE)) {
			writing.listSetAside(project);
		}
		writing.summary(project.report());
		if (details.contains(TextDetail.FILES)) {
			writing.files(project);
		}
		return writing.text.toString();
	}

	private void listSetAside(ProjectReport project) {
		if (!project.report().setAside().isEmpty()) {
			line(Style.PLACE.of("Found, and not counted:", coloured));
			line("");
			project.report().setAside().forEach(each -> finding(project, each.finding(), SetAsideText.of(each.why())));
		}
	}

	/** The hashes are cut to what a person compares; the other formats have them whole. */
	private void files(ProjectReport project) {
		line("");
		line("Read, with the first " + SHORT_HASH + " digits of the SHA-256:");
		project.report().files().forEach(file -> line("  " + file.sha256().substring(0, SHORT_HASH) + "  "
				+ project.pathOf(file.file()) + (file.role().isEmpty() ? "" : " (" + file.role() + ")")));
		project.report().baseline().ifPresent(used -> line("  " + used.sha256().substring(0, SHORT_HASH) + "  " + used.file() + " (baseline)"));
	}

	/** @param setAside why it does not count; empty if it counts */
	private void finding(ProjectReport project, ReportedFinding reported, String setAside) {
		Finding finding = reported.finding();
		String word = "%-8s ".formatted(finding.severity().word());
		line(style(finding.severity()).of(word, coloured) + Style.PLACE.of(place(project, finding.origin()), coloured));
		indented(finding.message());
		String boats = OccurrenceText.of(reported.occurrence());
		if (!boats.isEmpty()) {
			indented(boats);
		}
		if (!setAside.isEmpty()) {
			indented(setAside);
		}
		if (!finding.source().isEmpty()) {
			aside("source: " + finding.source());
		}
		aside("rule " + finding.rule() + (finding.element().equals(finding.origin().file()) ? "" : ", element " + finding.element()));
		line("");
	}

	private void indented(String sentence) {
		WrappedText.lines(INDENT, INDENT + "  ", sentence, WrappedText.PAGE).forEach(this::line);
	}

	private void aside(String words) {
		WrappedText.lines("", "  ", words, WrappedText.PAGE - INDENT.length()).forEach(line -> line(INDENT + Style.ASIDE.of(line, coloured)));
	}

	private static String place(ProjectReport project, Origin origin) {
		return origin.file().isEmpty() ? "(no file)" : project.placeOf(origin);
	}

	private static Style style(Severity severity) {
		return switch (severity) {
		case ERROR -> Style.ERROR;
		case WARNING -> Style.WARNING;
		case ADVICE -> Style.ADVICE;
		};
	}

	private void summary(CheckReport report) {
		String counts = counts(report);
		String none = report.complete() ? Style.GOOD.of("No findings.", coloured) : "No findings in what could be checked.";
		line(counts.isEmpty() ? none : counts);
		if (report.series().isEmpty() && report.complete()) {
			line("No series is declared here, so no boat was checked.");
		}
		String aside = setAside(report);
		if (!aside.isEmpty()) {
			line(aside);
		}
		report.series().forEach(series -> line(coverage(series)));
		line(rules(report));
		for (String gap : report.gaps()) {
			line(Style.ERROR.of("Not checked: ", coloured) + gap + ".");
		}
	}

	/** How many findings there are of each severity, in a sentence; empty if there are none. */
	static String counts(CheckReport report) {
		String counts = CountsText.of(report::count);
		return counts.isEmpty() ? "" : counts + ".";
	}

	/** What was found and does not count: waived, known from the baseline, or meaningless beside its cause. */
	static String setAside(CheckReport report) {
		List<String> counts = new ArrayList<>();
		add(counts, report.countSetAside(SetAside.Waived.class), "waived");
		add(counts, report.countSetAside(SetAside.InBaseline.class), "in the baseline");
		add(counts, report.countSetAside(SetAside.Silenced.class), "that others explain");
		return counts.isEmpty() ? "" : "Not counted: " + String.join(", ", counts) + ".";
	}

	private static void add(List<String> counts, long count, String word) {
		if (count > 0) {
			counts.add(count + " " + word);
		}
	}

	/** How much of a series was checked, in a sentence. */
	static String coverage(SeriesCoverage series) {
		List<String> boats = new ArrayList<>();
		if (series.combinations() > 0) {
			boats.add(counted(series.allCombinations(), series.combinations(), "combination of options", "combinations of options"));
		}
		if (series.hulls() > 0) {
			boats.add(counted(series.allHulls(), series.hulls(), "sold hull", "sold hulls"));
		}
		return "Series " + series.series() + ", " + counted(false, series.devices(), "device", "devices") + ": " + String.join(" and ", boats) + " checked.";
	}

	private static String counted(boolean all, int count, String one, String several) {
		return (all && count > 1 ? "all " : "") + count + " " + (count == 1 ? one : several);
	}

	/** How many rules ran, and which did not, in a sentence. */
	static String rules(CheckReport report) {
		String off = names(report, RuleRun.State.OFF);
		String failed = names(report, RuleRun.State.FAILED);
		long run = report.rules().stream().filter(rule -> rule.state() == RuleRun.State.RUN).count();
		return run + (run == 1 ? " rule" : " rules") + (off.isEmpty() ? "" : "; off: " + off) + (failed.isEmpty() ? "" : "; failed: " + failed) + ".";
	}

	private static String names(CheckReport report, RuleRun.State state) {
		return report.rules().stream().filter(rule -> rule.state() == state).map(RuleRun::rule).collect(Collectors.joining(", "));
	}

	private void line(String line) {
		text.append(line).append('\n');
	}
}
