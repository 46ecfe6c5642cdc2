/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A rule as the profile of the project leaves it.
 *
 * @param description the rule as it ships
 * @param on whether it runs
 * @param severity the severity of its findings where no band decides
 * @param bands the bands in force
 * @param source where the requirement comes from where no band decides
 * @param parameters the values of its parameters, by name
 */
public record RuleInForce(RuleDescription description, boolean on, Severity severity, List<Band> bands, String source,
		Map<String, ParameterInForce> parameters) {

	public RuleInForce {
		bands = List.copyOf(bands);
		parameters = Collections.unmodifiableMap(new LinkedHashMap<>(parameters));
	}

	/**
	 * The value of a parameter.
	 *
	 * @param value a quantity, or an Integer where something is counted
	 * @param source where it comes from
	 */
	public record ParameterInForce(Object value, String source) {
	}

	/** The rule as it ships. */
	public static RuleInForce asShipped(RuleDescription description) {
		Map<String, ParameterInForce> usual = new LinkedHashMap<>();
		description.parameters().forEach(each -> usual.put(each.name(), new ParameterInForce(each.usual(), each.source())));
		return new RuleInForce(description, description.usuallyOn(), description.severity(), description.bands(), description.source(), usual);
	}
}
