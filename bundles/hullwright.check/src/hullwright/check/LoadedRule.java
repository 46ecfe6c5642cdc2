/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.rules.BoatRule;
import hullwright.rules.RuleDescription;
import java.util.Optional;

/**
 * A rule as it was found at the extension point.
 *
 * @param rule the rule
 * @param description what it says of itself, asked once
 * @param contributor the bundle that contributed it
 */
public record LoadedRule(BoatRule rule, RuleDescription description, String contributor) {

	/** The page of the rule, Markdown beside its class, or empty if it has none. */
	public Optional<String> page() {
		return RulePage.of(rule.getClass());
	}
}
