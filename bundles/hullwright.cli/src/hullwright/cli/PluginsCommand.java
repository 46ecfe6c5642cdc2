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
import hullwright.report.PluginListing;
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

	@Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text", description = "How to list: text or json; without this, text.")
	private Format format;

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
		if (!Format.OF_LISTS.contains(format)) {
			throw new Refusal("plugins are listed as text or json, not as " + format);
		}
		Checker checker = Checker.create(TrustedPlugins.ofUser());
		List<PluginListing> listings = projectsOrNone().stream().map(project -> listing(project, checker)).toList();
		terminal.out().print(format == Format.json ? PluginListing.json(listings) : PluginListing.text(listings));
		return listings.stream().flatMap(listing -> listing.plugins().stream()).mapToInt(plugin -> switch (plugin.state()) {
		case ON -> ExitStatus.CLEAN;
		case NOT_TRUSTED -> ExitStatus.FINDINGS;
		case REFUSED -> ExitStatus.INCOMPLETE;
		}).max().orElse(ExitStatus.CLEAN);
	}

	private static PluginListing listing(Project project, Checker checker) {
		HousePlugins plugins = checker.plugins(project.snapshot());
		List<LoadedRule> rules = checker.rules(project.snapshot()).rules();
		List<PluginListing.Plugin> listed = plugins.plugins().stream().map(each -> {
			HousePlugins.State state = plugins.stateOf(each);
			return new PluginListing.Plugin(each.name(), each.version(), PluginListing.State.valueOf(state.name()),
					each.isOfProject() ? project.pathOf(each.file()) : each.file(), state == HousePlugins.State.ON ? ids(each, rules) : each.rules(),
					each.refusal(), each.sha256());
		}).toList();
		return new PluginListing(project.folder(), listed, project.pathOf(PluginFile.FOLDER) + " or " + TrustedPlugins.ofUser().rulesOfUser());
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
}
