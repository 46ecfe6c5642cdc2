/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.Checker;
import hullwright.check.LoadedRule;
import hullwright.check.Snapshot;
import hullwright.check.plugin.HousePlugin;
import hullwright.check.plugin.HousePlugins;
import hullwright.check.plugin.PluginFile;
import hullwright.check.plugin.TrustedPlugins;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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

		@Option(names = "--distrust", paramLabel = "FILE", description = "Trust this jar no longer; its checksum does as well.")
		private String distrust;
	}

	PluginsCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() {
		return change == null ? list() : change();
	}

	private int change() {
		TrustedPlugins trust = TrustedPlugins.ofUser();
		try {
			terminal.out().println(change.trust != null ? trust(trust) : distrust(trust));
			return ExitStatus.CLEAN;
		} catch (IOException e) {
			throw new Refusal("the list of those you trust, " + trust.file() + ", cannot be changed: " + e.getMessage());
		}
	}

	private String trust(TrustedPlugins trust) throws IOException {
		HousePlugin plugin = HousePlugin.of(PluginFile.at(change.trust));
		if (plugin.refusal().isPresent()) {
			throw new Refusal(change.trust + " was not trusted: " + plugin.refusal().get());
		}
		trust.trust(plugin, LocalDate.now());
		return "trusted: " + plugin.title() + ", SHA-256 " + plugin.sha256();
	}

	private String distrust(TrustedPlugins trust) throws IOException {
		String checksum = change.distrust.toLowerCase(Locale.ROOT);
		if (!TrustedPlugins.isChecksum(checksum)) {
			PluginFile jar = PluginFile.at(Path.of(change.distrust));
			jar.problem().ifPresent(why -> {
				throw new Refusal(change.distrust + " cannot be told from others: " + why);
			});
			checksum = jar.sha256();
		}
		trust.distrust(checksum);
		return "no longer trusted: " + change.distrust + ", SHA-256 " + checksum;
	}

	private int list() {
		Checker checker = Checker.create(TrustedPlugins.ofUser());
		int status = ExitStatus.CLEAN;
		for (Project project : projectsOrNone()) {
			HousePlugins plugins = checker.plugins(project.snapshot());
			List<LoadedRule> rules = checker.rules(project.snapshot()).rules();
			for (HousePlugin each : plugins.plugins()) {
				HousePlugins.State state = plugins.stateOf(each);
				tell(project, each, state, state == HousePlugins.State.ON ? ids(each, rules) : each.rules());
				status = Math.max(status, state == HousePlugins.State.ON ? ExitStatus.CLEAN : state == HousePlugins.State.REFUSED ? ExitStatus.INCOMPLETE
						: ExitStatus.FINDINGS);
			}
			if (plugins.plugins().isEmpty()) {
				terminal.out().println("No plugins here: a jar with rules of the house belongs into " + project.pathOf(PluginFile.FOLDER) + " or "
						+ TrustedPlugins.ofUser().rulesOfUser() + ".");
			}
		}
		return status;
	}

	/** Whoever asks outside of any project sees the plugins that they have for all. */
	private List<Project> projectsOrNone() {
		try {
			return projects.all();
		} catch (Refusal refusal) {
			if (projects.areNamed()) {
				throw refusal;
			}
			return List.of(new Project("", Snapshot.of(Map.of()).with(PluginFile.ofProject(Path.of(""))), Set.of()));
		}
	}

	private static List<String> ids(HousePlugin plugin, List<LoadedRule> rules) {
		return rules.stream().filter(rule -> rule.contributor().equals(plugin.title())).map(rule -> rule.description().id()).toList();
	}

	private void tell(Project project, HousePlugin plugin, HousePlugins.State state, List<String> rules) {
		terminal.out().println("%-40s %-12s %s".formatted(plugin.title(), word(state), shown(project, plugin)));
		plugin.refusal().ifPresent(why -> terminal.out().println("  " + why));
		rules.forEach(rule -> terminal.out().println("  rule " + rule));
		terminal.out().println("  SHA-256 " + plugin.sha256());
	}

	/** The path of a plugin as it leads there from where the command was given. */
	private static String shown(Project project, HousePlugin plugin) {
		return plugin.isOfProject() ? project.pathOf(plugin.file()) : plugin.file();
	}

	private static String word(HousePlugins.State state) {
		return switch (state) {
		case ON -> "on";
		case NOT_TRUSTED -> "not trusted";
		case REFUSED -> "refused";
		};
	}
}
