/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.rules.Finding;
import hullwright.rules.HouseDemands;
import hullwright.rules.RuleInForce;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The rules as the profile of a project leaves them.
 *
 * @param rules each rule, by id
 * @param demands what the house asks beside rules
 * @param problems what is wrong with the profile, with texts that keep it from being read, and with plugins
 */
public record RulesInForce(List<RuleInForce> rules, HouseDemands demands, List<Finding> problems) {

	public RulesInForce {
		rules = List.copyOf(rules);
		problems = List.copyOf(problems);
	}

	/** The caller holds the lock that guards reading. */
	static RulesInForce of(ReadProject project, ProjectRules rules) {
		ProfileInForce profile = ProfileInForce.of(project, rules);
		Stream<Finding> unread = project.problems().stream().filter(each -> project.unsound().contains(each.origin().file()));
		return new RulesInForce(List.copyOf(profile.rules().values()), profile.demands(),
				Stream.of(unread, profile.problems().stream(), rules.pluginsOff().stream()).flatMap(Function.identity()).toList());
	}
}
