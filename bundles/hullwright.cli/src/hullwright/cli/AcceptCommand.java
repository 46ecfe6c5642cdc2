/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.baseline.AcceptedFinding;
import hullwright.check.baseline.Baseline;
import hullwright.check.baseline.BaselineFile;
import hullwright.check.plugin.TrustedPlugins;
import hullwright.rules.report.CheckReport;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * {@code hullwright accept}: writes the findings of today into a baseline.
 */
@Command(name = "accept", sortOptions = false,
		description = "Accepts the findings that a project has now: writes them to a baseline, so that 'check --baseline' tells only what is new "
				+ "or has become worse. A finding is known again by its rule and element, wherever it stands in the text.",
		footer = { "", "Exit status: 0 the baseline is written, 2 it is not." })
final class AcceptCommand implements Callable<Integer> {

	private final Terminal terminal;

	@Mixin
	private WantedProjects projects;

	@Mixin
	private HelpOption help;

	@Option(names = "--to", paramLabel = "FILE", description = "The file to write; without this, baseline.json in the folder of the project.")
	private Path to;

	@Option(names = "--tolerance", paramLabel = "PERCENT", description = "By how many per cent of its limit a finding may move further from it and "
			+ "still be no worse; without this, what the baseline had, or 1.")
	private Double tolerance;

	@Option(names = "--as-of", paramLabel = "DATE", description = "The date to take for today, such as 2027-03-01.")
	private LocalDate asOf;

	AcceptCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() {
		List<Project> wanted = projects.all();
		if (wanted.size() > 1) {
			throw new Refusal("a baseline is of one project, and these are " + wanted.size() + ": "
					+ String.join(", ", wanted.stream().map(Project::folder).toList()));
		}
		if (tolerance != null && !(tolerance >= 0 && tolerance <= 100)) {
			throw new Refusal("a tolerance is from 0 to 100 per cent, not " + tolerance);
		}
		Project project = wanted.get(0);
		Path file = to == null ? Path.of(project.pathOf("baseline.json")) : to;
		double share = tolerance != null ? tolerance / 100
				: Files.exists(file) ? BaselinePath.read(file).use().tolerance() : Baseline.USUAL_TOLERANCE;
		CheckReport report = Checker.create(TrustedPlugins.ofUser()).check(CheckRequest.ofAll(project.snapshot(), asOf == null ? LocalDate.now() : asOf));
		if (!report.complete()) {
			report.gaps().forEach(gap -> terminal.err().println("hullwright: not checked: " + gap));
			throw new Refusal("nothing was accepted, since not everything could be checked");
		}
		List<AcceptedFinding> accepted = report.findings().stream().filter(each -> !each.occurrence().series().isEmpty())
				.map(each -> AcceptedFinding.of(each.finding())).toList();
		write(file, BaselineFile.write(accepted, share));
		terminal.out().println(accepted.size() + (accepted.size() == 1 ? " finding" : " findings") + " accepted in " + file);
		return ExitStatus.CLEAN;
	}

	private static void write(Path file, String text) {
		if (Files.exists(file)) {
			BaselinePath.read(file);
		}
		WholeFile.writeOrRefuse(file, text);
	}
}
