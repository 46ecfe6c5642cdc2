/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import java.util.List;

/**
 * A rule as the profile of the project leaves it.
 *
 * @param description the rule as it ships
 * @param on whether it runs
 * @param severity the severity of its findings where no band decides
 * @param bands the bands in force
 * @param source where the requirement comes from where no band decides
 */
public record RuleInForce(RuleDescription description, boolean on, Severity severity, List<Band> bands, String source) {

	public RuleInForce {
		bands = List.copyOf(bands);
	}

	/** The rule as it ships. */
	public static RuleInForce asShipped(RuleDescription description) {
		return new RuleInForce(description, true, description.severity(), description.bands(), description.source());
	}
}
