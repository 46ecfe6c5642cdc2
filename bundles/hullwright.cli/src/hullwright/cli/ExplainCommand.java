/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.Checker;
import hullwright.check.LoadedRule;
import hullwright.check.plugin.TrustedPlugins;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/**
 * {@code hullwright explain}: shows the page of a rule, or all rules there are.
 */
@Command(name = "explain",
		description = "Explains a rule: what is wrong, why it matters, the limit and its source, how to mend it.")
final class ExplainCommand implements Callable<Integer> {

	private final Terminal terminal;

	@Parameters(paramLabel = "RULE", arity = "0..1", description = "The rule, such as cabling/drop-too-long; without one, all rules are listed.")
	private String rule;

	@Mixin
	private HelpOption help;

	ExplainCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	/** Those that ship, and those of the house where this is given within a project. */
	private static List<LoadedRule> rules() {
		Checker checker = Checker.create(TrustedPlugins.ofUser());
		try {
			return checker.rules(Project.of(List.of("."), Path.of("")).get(0).snapshot()).rules();
		} catch (Refusal noProject) {
			return checker.rules().rules();
		}
	}

	@Override
	public Integer call() {
		List<LoadedRule> rules = rules();
		if (rule == null) {
			rules.forEach(each -> terminal.out().printf("%-34s %s%n", each.description().id(), each.description().title()));
			return ExitStatus.CLEAN;
		}
		LoadedRule found = rules.stream().filter(each -> each.description().id().equals(rule)).findFirst()
				.orElseThrow(() -> new Refusal("there is no rule '" + rule + "'; 'hullwright explain' lists them"));
		terminal.out().print(found.page().orElse("The rule " + rule + " has no page.\n"));
		return ExitStatus.CLEAN;
	}
}
