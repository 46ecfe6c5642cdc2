/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.rules.Rule;
import hullwright.rules.RuleDescription;
import java.util.Optional;

/**
 * A rule as it was found at the extension point.
 *
 * @param rule the rule
 * @param description what it says of itself, asked once
 * @param contributor the bundle that contributed it
 * @param page what is to be said about it: Markdown beside its class, or empty if it has none
 */
public record LoadedRule(Rule rule, RuleDescription description, String contributor, Optional<String> page) {

	/** A rule with the page beside its class. */
	public LoadedRule(Rule rule, RuleDescription description, String contributor) {
		this(rule, description, contributor, RulePage.of(rule.getClass()));
	}
}
