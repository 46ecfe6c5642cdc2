/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.CheckClock;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.check.plugin.TrustedPlugins;
import hullwright.report.JUnitReport;
import hullwright.report.JsonReport;
import hullwright.report.MarkdownReport;
import hullwright.report.ProjectReport;
import hullwright.report.ProjectSources;
import hullwright.report.SarifReport;
import hullwright.report.TextDetail;
import hullwright.report.TextReport;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * {@code hullwright check}: checks files, folders or the project around them.
 */
@Command(name = "check", sortOptions = false,
		description = "Checks every boat that can be ordered and every hull that is sold, and shows each finding once.",
		footer = { "", "Exit status: 0 nothing to mend, 1 findings, 2 not everything could be checked." })
final class CheckCommand implements Callable<Integer> {

	private final Terminal terminal;

	@Mixin
	private WantedProjects projects;

	@Mixin
	private HelpOption help;

	@ArgGroup
	private OneBoat oneBoat;

	@Mixin
	private FixOption fix;

	@Option(names = "--baseline", paramLabel = "FILE", description = "Tell only what is new or worse than in this list of accepted findings; "
			+ "'hullwright accept' writes one.")
	private Path baseline;

	@Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text", description = "How to report: ${COMPLETION-CANDIDATES}; without this, text.")
	private Format format;

	@Option(names = "--output", paramLabel = "FILE", description = "Write the report to this file, whole or not at all.")
	private Path output;

	@Option(names = "--set-aside", description = "As text, also list what was found and does not count, with the reasons; the other formats always do.")
	private boolean setAside;

	@Option(names = "--files", description = "As text, also list the catalogs, the profile and all else that was read, with hashes; the other formats always do.")
	private boolean files;

	@Option(names = "--fail-on", paramLabel = "SEVERITY", defaultValue = "warning",
			description = "From which severity on findings give exit status 1: ${COMPLETION-CANDIDATES}; without this, warning.")
	private FailOn failOn;

	@Option(names = "--as-of", paramLabel = "DATE", description = "The date to take for today, such as 2027-03-01.")
	private LocalDate asOf;

	@Option(names = "--timing", description = "Also tell, on the error stream, what the time was spent on.")
	private boolean timing;

	CheckCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	/** From which severity on the process ends with the status of findings. */
	enum FailOn {
		advice, warning, error, never;

		boolean isReachedBy(Severity worst) {
			return this != never && worst.compareTo(Severity.values()[ordinal()]) >= 0;
		}
	}

	@Override
	public Integer call() {
		if (output != null) {
			WholeFile.refuseHopeless(output);
		}
		Checker checker = Checker.create(TrustedPlugins.ofUser());
		LocalDate today = asOf == null ? LocalDate.now() : asOf;
		List<ProjectReport> reports = new ArrayList<>();
		Map<String, ProjectSources> sources = new HashMap<>();
		CheckClock clock = new CheckClock();
		for (Project project : projects.all()) {
			CheckRequest request = request(project, today);
			if (fix.isGiven()) {
				request = request.on(new ProjectMending(checker, terminal).mend(project, request, fix.rules()));
			}
			CheckReport report = checker.check(request, () -> false, clock);
			reports.add(new ProjectReport(project.folder(), report));
			sources.put(project.folder(), sources(project, request.snapshot()));
		}
		if (output == null) {
			terminal.out().print(written(reports, sources, terminal.coloured()));
		} else {
			WholeFile.writeOrRefuse(output, written(reports, sources, false));
		}
		if (timing) {
			terminal.err().print(TimingText.of(clock, projects.all().stream().map(each -> checker.rules(each.snapshot())).toList()));
		}
		return reports.stream().mapToInt(report -> status(report.report())).max().orElse(ExitStatus.CLEAN);
	}

	private static ProjectSources sources(Project project, Snapshot checked) {
		Map<String, String> texts = new HashMap<>();
		checked.files().keySet().forEach(file -> checked.text(file).ifPresent(text -> texts.put(file, text)));
		return new ProjectSources(RepositoryRoot.pathTo(Path.of(project.folder()), Path.of("")), texts);
	}

	private String written(List<ProjectReport> reports, Map<String, ProjectSources> sources, boolean coloured) {
		return switch (format) {
		case text -> TextReport.of(reports, coloured, details());
		case json -> JsonReport.of(reports);
		case sarif -> SarifReport.of(reports, Version.number(), sources);
		case junit -> JUnitReport.of(reports);
		case markdown -> MarkdownReport.of(reports);
		};
	}

	private Set<TextDetail> details() {
		Set<TextDetail> details = EnumSet.noneOf(TextDetail.class);
		if (setAside) {
			details.add(TextDetail.SET_ASIDE);
		}
		if (files) {
			details.add(TextDetail.FILES);
		}
		return details;
	}

	private CheckRequest request(Project project, LocalDate today) {
		CheckRequest request = new CheckRequest(project.snapshot(), project.focus(), oneBoat == null ? new WantedBoats.All() : oneBoat.wanted(), today);
		return baseline == null ? request : request.against(BaselinePath.read(baseline));
	}

	private int status(CheckReport report) {
		if (!report.complete()) {
			return ExitStatus.INCOMPLETE;
		}
		return report.worst().filter(failOn::isReachedBy).isPresent() ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
	}
}
