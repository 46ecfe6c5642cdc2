/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.check.plugin.HousePlugin;
import hullwright.check.plugin.HousePlugins;
import hullwright.network.Origin;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.RuleRun;
import hullwright.rules.report.SourceFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a project is checked with: the rules that ship and those of its plugins, and what became of both.
 *
 * @param rules the rules
 * @param plugins the plugins that were found, running or not
 * @param guard knows which rules have failed
 * @param watch gives up rules that take too long
 */
record ProjectRules(RuleSet rules, HousePlugins plugins, RuleGuard guard, WatchedRun watch) {

	/** The plugins that do not run, as findings: a check without the rules of the house must not pass for one with them. */
	List<Finding> pluginsOff() {
		return plugins.plugins().stream().flatMap(plugin -> switch (plugins.stateOf(plugin)) {
		case ON -> Stream.<Finding>empty();
		case NOT_TRUSTED -> Stream.of(off(plugin, ProjectProblem.PLUGIN_OFF, Severity.WARNING,
				"nobody here trusts it yet; 'hullwright plugins --trust' with this file does, if you know where it comes from"));
		case REFUSED -> Stream.of(off(plugin, ProjectProblem.PLUGIN_REFUSED, Severity.ERROR, plugin.refusal().orElseThrow()));
		}).toList();
	}

	private static Finding off(HousePlugin plugin, String problem, Severity severity, String why) {
		Origin place = plugin.isOfProject() ? new Origin(plugin.file(), plugin.file(), 0, 0, 0, 0) : Origin.nowhere(plugin.file());
		return Finding.ofText(problem, severity, place, "plugin " + plugin.title() + " is off: " + why, List.of());
	}

	/** Why not every rule was there to look, in words. */
	List<String> gaps() {
		Stream<String> off = plugins.plugins().stream().filter(plugin -> plugins.stateOf(plugin) != HousePlugins.State.ON)
				.map(plugin -> "plugin " + plugin.file() + " did not run");
		return Stream.concat(rules.problems().stream(), off).toList();
	}

	/**
	 * Whether there is no such rule. While a plugin is off nobody knows its rules, so one of a family that nothing else has may be
	 * among them; that the plugin is off is told once, for itself.
	 */
	boolean lacks(String rule) {
		String id = String.valueOf(rule);
		String family = id.substring(0, id.indexOf('/') + 1);
		boolean anyOff = plugins.plugins().stream().anyMatch(plugin -> plugins.stateOf(plugin) != HousePlugins.State.ON);
		return rules.rule(id).isEmpty() && !(anyOff && rules.ids().stream().noneMatch(known -> known.startsWith(family)));
	}

	/** The jars whose rules ran. */
	List<SourceFile> sources() {
		return plugins.plugins().stream().filter(plugin -> plugins.stateOf(plugin) == HousePlugins.State.ON)
				.map(plugin -> new SourceFile(plugin.sourceName(), "plugin", plugin.sha256())).toList();
	}

	/** The rules that have failed, as findings. */
	List<Finding> failures() {
		return rules.rules().stream().flatMap(rule -> failure(rule).stream()).toList();
	}

	private Optional<Finding> failure(LoadedRule rule) {
		String id = rule.description().id();
		return guard.failure(id).map(reason -> Finding.ofText(ProjectProblem.RULE_FAILED, Severity.ERROR, Origin.nowhere(id),
				"rule " + id + " of bundle " + rule.contributor() + " failed and is off for the rest of the session: " + reason, List.of()));
	}

	/** What became of each rule. */
	List<RuleRun> runs(ProfileInForce profile) {
		Map<String, RuleRun> runs = new TreeMap<>();
		for (LoadedRule rule : rules.rules()) {
			String id = rule.description().id();
			Optional<String> failure = guard.failure(id);
			RuleRun.State state = failure.isPresent() ? RuleRun.State.FAILED : profile.rules().get(id).on() ? RuleRun.State.RUN : RuleRun.State.OFF;
			runs.put(id, new RuleRun(rule.description(), rule.contributor(), state, failure, rule.page()));
		}
		return List.copyOf(runs.values());
	}
}
