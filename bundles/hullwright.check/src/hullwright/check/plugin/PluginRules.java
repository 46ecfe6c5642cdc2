/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import hullwright.rules.BoatRule;
import hullwright.rules.Rule;
import hullwright.rules.RuleDescription;
import hullwright.rules.SeriesRule;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The rules of a plugin that is trusted.
 *
 * @param rules those that could be made
 * @param problems why others could not, in words
 */
public record PluginRules(List<Made> rules, List<String> problems) {

	public PluginRules {
		rules = List.copyOf(rules);
		problems = List.copyOf(problems);
	}

	/**
	 * A rule, ready to run.
	 *
	 * @param page the Markdown beside its class, if there is any
	 */
	public record Made(Rule rule, RuleDescription description, Optional<String> page) {
	}

	/** Loads the classes of a plugin and makes its rules. */
	public static PluginRules of(HousePlugin plugin) {
		List<Made> rules = new ArrayList<>();
		List<String> problems = new ArrayList<>();
		try {
			PluginClasses classes = new PluginClasses(plugin);
			for (String name : plugin.rules()) {
				make(classes, name, rules, problems);
			}
		} catch (PluginRefused e) {
			problems.add(e.getMessage());
		}
		return new PluginRules(rules, problems);
	}

	private static void make(PluginClasses classes, String name, List<Made> rules, List<String> problems) {
		try {
			Object made = classes.loadClass(name).getConstructor().newInstance();
			if (!(made instanceof Rule rule)) {
				problems.add("class " + name + " is neither a " + BoatRule.class.getSimpleName() + " nor a " + SeriesRule.class.getSimpleName());
				return;
			}
			RuleDescription description = rule.description();
			if (description == null) {
				problems.add("rule class " + name + " does not describe itself");
				return;
			}
			rules.add(new Made(rule, description, page(rule.getClass())));
		} catch (ReflectiveOperationException | RuntimeException | Error e) {
			Throwable cause = e.getCause() == null ? e : e.getCause();
			problems.add("rule class " + name + " cannot be used: " + cause.getClass().getSimpleName()
					+ (cause.getMessage() == null ? "" : ": " + cause.getMessage()));
		}
	}

	private static Optional<String> page(Class<?> rule) throws ReflectiveOperationException {
		try (InputStream page = rule.getClassLoader().getResourceAsStream(rule.getName().replace('.', '/') + ".md")) {
			return page == null ? Optional.empty() : Optional.of(new String(page.readAllBytes(), StandardCharsets.UTF_8));
		} catch (IOException e) {
			return Optional.empty();
		}
	}
}
