/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.Checker;
import hullwright.check.RulesInForce;
import hullwright.check.plugin.TrustedPlugins;
import hullwright.network.Origin;
import hullwright.rules.Band;
import hullwright.rules.Finding;
import hullwright.rules.HouseDemands;
import hullwright.rules.RuleInForce;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/**
 * {@code hullwright config}: shows what is in force for a project.
 */
@Command(name = "config", sortOptions = false,
		description = "Shows what is in force for a project: each rule, whether it is on, its severities and limits and what else it works with, "
				+ "and where each of these comes from; then what else the house demands.",
		footer = { "", "Exit status: 0 that is what is in force, 2 the profile or a plugin has problems." })
final class ConfigCommand implements Callable<Integer> {

	private final Terminal terminal;

	@Mixin
	private WantedProjects projects;

	@Mixin
	private HelpOption help;

	ConfigCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() {
		Checker checker = Checker.create(TrustedPlugins.ofUser());
		List<Project> wanted = projects.all();
		boolean sound = true;
		for (Project project : wanted) {
			if (wanted.size() > 1) {
				terminal.out().println("Project " + project.folder() + "\n");
			}
			RulesInForce inForce = checker.inForce(project.snapshot());
			inForce.problems().forEach(each -> tell(project, each));
			inForce.rules().forEach(this::tell);
			tell(inForce.demands());
			sound &= inForce.problems().isEmpty();
		}
		return sound ? ExitStatus.CLEAN : ExitStatus.INCOMPLETE;
	}

	private void tell(Project project, Finding problem) {
		Origin place = problem.origin();
		String where = place.file().isEmpty() ? place.element() : project.pathOf(place.file()) + (place.line() == 0 ? "" : ":" + place.line() + ":" + place.column());
		terminal.err().println("hullwright: " + where + ": " + problem.message());
	}

	private void tell(RuleInForce rule) {
		if (!rule.on()) {
			line(rule.description().id(), "off", rule.description().usuallyOn() ? rule.source() : "standard: off unless a profile asks for it");
			return;
		}
		if (rule.bands().isEmpty()) {
			line(rule.description().id(), rule.severity().word(), rule.source());
		} else {
			line(rule.description().id(), "on", "");
			for (Band band : rule.bands()) {
				line("", band.severity().word() + " above " + band.limit(), band.source());
			}
		}
		rule.parameters().forEach((name, value) -> line("", name + " " + value.value(), value.source()));
	}

	private void tell(HouseDemands demands) {
		demands.demands().forEach(each -> line("require", word(each.what()) + " on every " + word(each.on()), each.source()));
		demands.approved().ifPresent(each -> line("approved catalogs", String.join(" and ", each.names()), each.source()));
	}

	private static String word(Enum<?> of) {
		return of.name().toLowerCase(Locale.ROOT);
	}

	private void line(String rule, String what, String source) {
		terminal.out().println("%-34s %-24s %s".formatted(rule, what, source).stripTrailing());
	}
}
