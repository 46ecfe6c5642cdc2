/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.Checker;
import hullwright.check.plugin.HousePlugin;
import hullwright.check.plugin.HousePlugins;
import hullwright.check.plugin.PluginFile;
import hullwright.check.plugin.TrustedPlugins;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * {@code hullwright plugins}: lists the rules of the house, and says whom to trust.
 */
@Command(name = "plugins", sortOptions = false,
		description = "Lists the plugins with rules of the house: jars in the folder 'rules' of a project, and in that of your configuration. "
				+ "Each is off until you trust it, since its rules run with your rights; a jar that changes must be trusted anew.",
		footer = { "", "Exit status: 0 every plugin is on, 1 some are not trusted, 2 some cannot be used." })
final class PluginsCommand implements Callable<Integer> {

	private final Terminal terminal;

	@Mixin
	private WantedProjects projects;

	@Mixin
	private HelpOption help;

	@ArgGroup
	private Change change;

	/** What is to change. */
	static final class Change {

		@Option(names = "--trust", paramLabel = "FILE", description = "Trust this jar, as it is now.")
		private Path trust;

		@Option(names = "--distrust", paramLabel = "FILE", description = "Trust this jar no longer.")
		private Path distrust;
	}

	PluginsCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() {
		return change == null ? list() : change();
	}

	private int change() {
		Path file = change.trust == null ? change.distrust : change.trust;
		TrustedPlugins trust = TrustedPlugins.ofUser();
		try {
			HousePlugin plugin = HousePlugins.of(List.of(PluginFile.at(file)), trust).plugins().get(0);
			if (change.trust == null) {
				trust.distrust(plugin);
			} else if (plugin.refusal().isPresent()) {
				throw new Refusal(file + " was not trusted: " + plugin.refusal().get());
			} else {
				trust.trust(plugin, LocalDate.now());
			}
			terminal.out().println((change.trust == null ? "no longer trusted: " : "trusted: ") + plugin.title() + ", SHA-256 " + plugin.sha256());
			return ExitStatus.CLEAN;
		} catch (IOException e) {
			throw new Refusal("the list of those you trust, " + trust.file() + ", cannot be changed: " + e.getMessage());
		}
	}

	private int list() {
		Checker checker = Checker.create();
		int status = ExitStatus.CLEAN;
		for (Project project : projects.all()) {
			HousePlugins plugins = checker.plugins(project.snapshot());
			for (HousePlugin each : plugins.plugins()) {
				HousePlugins.State state = plugins.stateOf(each);
				terminal.out().println("%-40s %-12s %s".formatted(each.title(), word(state), shown(project, each)));
				terminal.out().println("  SHA-256 " + each.sha256());
				each.refusal().ifPresent(why -> terminal.out().println("  " + why));
				status = Math.max(status, state == HousePlugins.State.ON ? ExitStatus.CLEAN : state == HousePlugins.State.REFUSED ? ExitStatus.INCOMPLETE
						: ExitStatus.FINDINGS);
			}
			List<String> problems = checker.rules(project.snapshot()).problems();
			if (plugins.plugins().isEmpty()) {
				terminal.out().println("No plugins here: a jar with rules of the house belongs into " + project.pathOf("rules") + " or "
						+ TrustedPlugins.ofUser().rulesOfUser() + ".");
			}
			for (String problem : problems) {
				if (plugins.plugins().stream().anyMatch(each -> plugins.stateOf(each) == HousePlugins.State.ON && problem.contains(each.file()))) {
					terminal.out().println("  " + problem);
					status = ExitStatus.INCOMPLETE;
				}
			}
		}
		return status;
	}

	/** The path of a plugin as it leads there from where the command was given. */
	private static String shown(Project project, HousePlugin plugin) {
		return Path.of(plugin.file()).isAbsolute() ? plugin.file() : project.pathOf(plugin.file());
	}

	private static String word(HousePlugins.State state) {
		return switch (state) {
		case ON -> "on";
		case NOT_TRUSTED -> "not trusted";
		case REFUSED -> "refused";
		};
	}
}
