/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.rules.Finding;
import hullwright.rules.report.SetAside;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which findings on one boat others make meaningless: a section without supply is one finding, not one for each device in it.
 */
final class Silencing {

	private final Map<String, List<Finding>> byRule;
	private final Map<String, Set<String>> silencedBy;
	/** By finding whether something silences it; empty while that is being asked, so that rules which silence each other do not silence both. */
	private final Map<Finding, Optional<Finding>> causes = new HashMap<>();

	/**
	 * The findings on a boat.
	 *
	 * @param byRule by the id of their rule
	 * @param silencedBy by the id of a rule, those that silence it
	 */
	Silencing(Map<String, List<Finding>> byRule, Map<String, Set<String>> silencedBy) {
		this.byRule = byRule;
		this.silencedBy = silencedBy;
	}

	/** What makes a finding meaningless, if anything does. */
	Optional<SetAside.Silenced> of(Finding finding) {
		return cause(finding).map(cause -> new SetAside.Silenced(cause.rule(), cause.element()));
	}

	private Optional<Finding> cause(Finding finding) {
		Set<String> rules = silencedBy.getOrDefault(finding.rule(), Set.of());
		if (rules.isEmpty()) {
			return Optional.empty();
		}
		if (!causes.containsKey(finding)) {
			causes.put(finding, Optional.empty());
			causes.put(finding, rules.stream().sorted().map(rule -> byRule.getOrDefault(rule, List.of())).flatMap(Collection::stream)
					.filter(other -> other.isAbout(finding.element()) && cause(other).isEmpty()).findFirst());
		}
		return causes.get(finding);
	}
}
