/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.check.plugin.HousePlugin;
import hullwright.check.plugin.HousePlugins;
import hullwright.check.plugin.PluginFile;
import hullwright.check.plugin.PluginRules;
import hullwright.check.plugin.TrustedPlugins;
import java.util.ArrayList;
import java.util.List;

/**
 * The rules that ship, and with them those of the house: of trusted plugins that a project or the user has. Plugins that stay off are
 * told as problems, so that nobody takes a check without them for a whole one.
 */
final class HouseRules {

	private final RuleSet shipped;
	private final TrustedPlugins trust;
	private HousePlugins known;
	private RuleSet together;

	HouseRules(RuleSet shipped, TrustedPlugins trust) {
		this.shipped = shipped;
		this.trust = trust;
	}

	/** The rules for a project; classes of plugins are loaded once for as long as the plugins stay the same. */
	synchronized RuleSet of(Snapshot snapshot) {
		HousePlugins plugins = plugins(snapshot);
		if (plugins.plugins().isEmpty()) {
			return shipped;
		}
		if (known == null || !isSame(plugins, known)) {
			known = plugins;
			together = together(plugins);
		}
		return together;
	}

	/** The plugins of a project and of the user. */
	HousePlugins plugins(Snapshot snapshot) {
		List<PluginFile> jars = new ArrayList<>(trust.pluginsOfUser());
		jars.addAll(snapshot.plugins());
		return HousePlugins.of(jars, trust);
	}

	private static boolean isSame(HousePlugins one, HousePlugins other) {
		return states(one).equals(states(other));
	}

	private static List<String> states(HousePlugins plugins) {
		return plugins.plugins().stream().map(each -> each.file() + " " + each.sha256() + " " + plugins.stateOf(each)).toList();
	}

	private RuleSet together(HousePlugins plugins) {
		List<LoadedRule> rules = new ArrayList<>(shipped.rules());
		List<String> problems = new ArrayList<>(shipped.problems());
		for (HousePlugin plugin : plugins.plugins()) {
			switch (plugins.stateOf(plugin)) {
			case REFUSED -> problems.add("plugin " + plugin.file() + " is off: " + plugin.refusal().orElseThrow());
			case NOT_TRUSTED -> problems.add("plugin " + plugin.file() + " (" + plugin.title() + ") is off: nobody here trusts it yet; "
					+ "'hullwright plugins --trust' with this file does, if you know where it comes from");
			case ON -> add(plugin, rules, problems);
			}
		}
		return new RuleSet(rules, problems);
	}

	private static void add(HousePlugin plugin, List<LoadedRule> rules, List<String> problems) {
		PluginRules loaded = PluginRules.of(plugin);
		loaded.problems().forEach(each -> problems.add("plugin " + plugin.file() + ": " + each));
		loaded.rules().forEach(rule -> {
			String id = rule.description().id();
			rules.stream().filter(each -> each.description().id().equals(id)).findFirst().ifPresentOrElse(
					earlier -> problems.add("plugin " + plugin.file() + " claims the rule " + id + ", which " + earlier.contributor() + " has already"),
					() -> rules.add(new LoadedRule(rule.rule(), rule.description(), plugin.title(), rule.page())));
		});
	}
}
