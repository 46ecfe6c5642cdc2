/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.rules.BoatRule;
import hullwright.rules.Rule;
import hullwright.rules.RuleDescription;
import hullwright.rules.SeriesRule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;

/**
 * The rules that are contributed at the extension point, whoever contributes them.
 *
 * @param rules the rules, by id
 * @param problems contributions that are no rules, in words
 */
public record RuleSet(List<LoadedRule> rules, List<String> problems) {

	private static final String POINT = "hullwright.rules.rule";

	public RuleSet {
		rules = List.copyOf(rules);
		problems = List.copyOf(problems);
	}

	/** The rules in a registry. One contribution that fails does not keep out the others. */
	static RuleSet in(IExtensionRegistry registry) {
		Map<String, LoadedRule> byId = new TreeMap<>();
		List<String> problems = new ArrayList<>();
		List<IConfigurationElement> contributions = new ArrayList<>(List.of(registry.getConfigurationElementsFor(POINT)));
		contributions.sort(Comparator.comparing(element -> element.getContributor().getName() + " " + element.getAttribute("class")));
		for (IConfigurationElement contribution : contributions) {
			String contributor = contribution.getContributor().getName();
			try {
				LoadedRule loaded = load(contribution, contributor);
				LoadedRule earlier = byId.putIfAbsent(loaded.description().id(), loaded);
				if (earlier != null) {
					problems.add("bundle " + contributor + " claims the rule " + loaded.description().id() + ", which bundle "
							+ earlier.contributor() + " has already");
				}
			} catch (CoreException | RuntimeException | LinkageError e) {
				problems.add("bundle " + contributor + ": rule class " + contribution.getAttribute("class") + " cannot be used: " + e.getMessage());
			}
		}
		return new RuleSet(List.copyOf(byId.values()), problems);
	}

	private static LoadedRule load(IConfigurationElement contribution, String contributor) throws CoreException {
		Object created = contribution.createExecutableExtension("class");
		if (!(created instanceof Rule rule)) {
			throw new IllegalArgumentException("it is neither a " + BoatRule.class.getSimpleName() + " nor a " + SeriesRule.class.getSimpleName());
		}
		RuleDescription description = rule.description();
		if (description == null) {
			throw new IllegalArgumentException("it does not describe itself");
		}
		return new LoadedRule(rule, description, contributor);
	}

	/** The ids of the rules. */
	public Set<String> ids() {
		return rules.stream().map(rule -> rule.description().id()).collect(Collectors.toUnmodifiableSet());
	}

	/** The rule with an id. */
	public Optional<LoadedRule> rule(String id) {
		return rules.stream().filter(rule -> rule.description().id().equals(id)).findFirst();
	}
}
