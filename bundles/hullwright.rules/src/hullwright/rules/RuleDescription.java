/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import hullwright.quantity.Dimension;
import hullwright.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a rule declares of itself.
 *
 * @param id its identity, {@code family/what-is-wrong} in plain words; never changed once released
 * @param title what is wrong, for people
 * @param message the text of a finding, with the names of its values in braces: {@code the drop is {length} long}
 * @param severity the severity of its findings where no band decides
 * @param bands limits with severities, the mildest first; empty for a rule without a limit
 * @param source where the requirement was read, for a rule without bands
 * @param parameters what a profile can set beside severities and limits
 * @param silencedBy the ids of the rules whose findings make those of this rule meaningless where they are about the same element
 * @param usuallyOn whether the rule runs where no profile speaks of it; a rule that would tell most good boats something does not
 */
public record RuleDescription(String id, String title, String message, Severity severity, List<Band> bands, String source,
		List<Parameter> parameters, Set<String> silencedBy, boolean usuallyOn) {

	private static final Pattern ID = Pattern.compile("[a-z]+/[a-z]+(-[a-z]+)*");

	public RuleDescription {
		if (!ID.matcher(id).matches()) {
			throw new IllegalArgumentException("'" + id + "' is no rule id; write family/what-is-wrong in small letters");
		}
		Objects.requireNonNull(title);
		Objects.requireNonNull(message);
		Objects.requireNonNull(severity);
		Objects.requireNonNull(source);
		bands = List.copyOf(bands);
		parameters = List.copyOf(parameters);
		silencedBy = Set.copyOf(silencedBy);
	}

	/** A rule that holds or does not, without a limit. */
	public static RuleDescription of(String id, String title, Severity severity, String message, String source) {
		return new RuleDescription(id, title, message, severity, List.of(), source, List.of(), Set.of(), true);
	}

	/** A rule with bands, the mildest first. */
	public static RuleDescription banded(String id, String title, String message, Band... bands) {
		List<Band> ordered = new ArrayList<>(List.of(bands));
		Band strictest = ordered.get(ordered.size() - 1);
		return new RuleDescription(id, title, message, strictest.severity(), ordered, strictest.source(), List.of(), Set.of(), true);
	}

	/** The same rule with parameters. */
	public RuleDescription with(Parameter... settable) {
		return new RuleDescription(id, title, message, severity, bands, source, List.of(settable), silencedBy, usuallyOn);
	}

	/** The same rule, silent about an element of which one of these rules finds something. */
	public RuleDescription silencedBy(String... rules) {
		return new RuleDescription(id, title, message, severity, bands, source, parameters, Set.of(rules), usuallyOn);
	}

	/** The same rule, which runs only where a profile asks for it. */
	public RuleDescription offByDefault() {
		return new RuleDescription(id, title, message, severity, bands, source, parameters, silencedBy, false);
	}

	/** The kind of quantity that the limits are, if the rule has limits. */
	public Optional<Dimension> limitDimension() {
		return bands.stream().findFirst().map(Band::limit).map(Quantity::dimension);
	}
}
