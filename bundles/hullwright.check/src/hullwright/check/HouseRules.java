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
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Joins the rules of trusted plugins, which a project or the user has, to those that ship. A plugin is loaded once a session; what
 * becomes of it in a project is looked up with each check, so that trust which is given or taken counts at once.
 */
final class HouseRules {

	private final RuleSet shipped;
	private final Optional<TrustedPlugins> trust;
	private final Duration limit;
	private final RuleGuard shippedGuard = new RuleGuard();
	private final Map<String, HousePlugin> read = new ConcurrentHashMap<>();
	private final Map<String, PluginRules> loaded = new ConcurrentHashMap<>();
	private final Map<List<String>, ProjectRules> joined = new ConcurrentHashMap<>();

	/**
	 * Joins to a set.
	 *
	 * @param trust whose trust counts, and whose own plugins; without, nothing is trusted
	 * @param limit how long a rule may take for one boat, and a plugin to be loaded
	 */
	HouseRules(RuleSet shipped, Optional<TrustedPlugins> trust, Duration limit) {
		this.shipped = shipped;
		this.trust = trust;
		this.limit = limit;
	}

	/** The rules that ship. */
	RuleSet shipped() {
		return shipped;
	}

	/** What a project is checked with. */
	ProjectRules of(Snapshot snapshot) {
		Map<String, String> taken = new HashMap<>();
		shipped.rules().forEach(rule -> taken.put(rule.description().id(), rule.contributor()));
		HousePlugins found = found(snapshot);
		List<HousePlugin> plugins = new ArrayList<>();
		List<HousePlugin> running = new ArrayList<>();
		for (HousePlugin plugin : found.plugins()) {
			HousePlugin tried = plugin;
			if (found.stateOf(plugin) == HousePlugins.State.ON) {
				Optional<String> why = claim(plugin, taken);
				tried = why.map(plugin::refused).orElse(plugin);
				if (why.isEmpty()) {
					running.add(plugin);
				}
			}
			plugins.add(tried);
		}
		ProjectRules same = joined.computeIfAbsent(running.stream().map(HousePlugin::sha256).toList(), checksums -> joined(running));
		return new ProjectRules(same.rules(), new HousePlugins(plugins, found.trusted()), same.guard(), same.watch());
	}

	private HousePlugins found(Snapshot snapshot) {
		List<PluginFile> jars = new ArrayList<>(trust.map(TrustedPlugins::pluginsOfUser).orElse(List.of()));
		jars.addAll(snapshot.plugins());
		return HousePlugins.of(jars.stream().map(this::read).toList(), trust);
	}

	private HousePlugin read(PluginFile jar) {
		return jar.problem().isPresent() ? HousePlugin.of(jar) : read.computeIfAbsent(jar.file() + " " + jar.sha256(), known -> HousePlugin.of(jar));
	}

	/** A plugin takes the ids of its rules, all or none, or it is said why it cannot. */
	private Optional<String> claim(HousePlugin plugin, Map<String, String> taken) {
		PluginRules content = loaded.computeIfAbsent(plugin.sha256(), checksum -> load(plugin));
		if (!content.problems().isEmpty()) {
			return Optional.of(String.join("; ", content.problems()));
		}
		Map<String, String> own = new HashMap<>();
		for (PluginRules.Made rule : content.rules()) {
			String id = rule.description().id();
			String earlier = taken.containsKey(id) ? taken.get(id) : own.putIfAbsent(id, "another of its rules");
			if (earlier != null) {
				return Optional.of("it claims the rule " + id + ", which " + earlier + " has already");
			}
		}
		own.keySet().forEach(id -> taken.put(id, plugin.title()));
		return Optional.empty();
	}

	/** Loads a plugin on a thread of its own, which is left behind if that takes too long. */
	private PluginRules load(HousePlugin plugin) {
		FutureTask<PluginRules> task = new FutureTask<>(() -> PluginRules.of(plugin));
		Thread worker = new Thread(task, "loading of " + plugin.name());
		worker.setDaemon(true);
		worker.start();
		try {
			return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
		} catch (TimeoutException e) {
			return new PluginRules(List.of(), List.of("it takes longer than " + limit.toSeconds() + " s to make its rules"));
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			return new PluginRules(List.of(), List.of("it was not loaded to the end"));
		} catch (ExecutionException e) {
			return new PluginRules(List.of(), List.of("it cannot be loaded: " + e.getCause()));
		}
	}

	/** Whether a rule of a plugin has failed is known for as long as the plugins stay what they are: a mended one runs again. */
	private ProjectRules joined(List<HousePlugin> running) {
		List<LoadedRule> rules = new ArrayList<>(shipped.rules());
		for (HousePlugin plugin : running) {
			loaded.get(plugin.sha256()).rules().forEach(made -> rules.add(new LoadedRule(made.rule(), made.description(), plugin.title(), made.page())));
		}
		rules.sort(Comparator.comparing(rule -> rule.description().id()));
		RuleGuard guard = new RuleGuard(shippedGuard, shipped.ids());
		return new ProjectRules(new RuleSet(rules, shipped.problems()), new HousePlugins(List.of(), List.of()), guard, new WatchedRun(guard, limit));
	}
}
