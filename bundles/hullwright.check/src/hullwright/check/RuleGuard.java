/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Runs rules so that one that fails does no harm: it is named and switched off for the rest of the session, the others run.
 */
final class RuleGuard {

	private final Map<String, String> failures = new ConcurrentHashMap<>();

	/** What a rule finds on a boat, or nothing if it fails or has failed before. */
	List<Finding> run(LoadedRule rule, BoatUnderCheck boat) {
		String id = rule.description().id();
		if (failures.containsKey(id)) {
			return List.of();
		}
		try {
			List<Finding> findings = rule.rule().check(boat);
			if (findings == null) {
				fail(id, "it returned nothing instead of a list of findings");
				return List.of();
			}
			if (findings.stream().anyMatch(finding -> finding == null || !finding.rule().equals(id))) {
				fail(id, "it reported no finding, or one in the name of another rule");
				return List.of();
			}
			return findings;
		} catch (RuntimeException | StackOverflowError | LinkageError | AssertionError e) {
			fail(id, e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ": " + e.getMessage())
					+ (e.getStackTrace().length == 0 ? "" : " at " + e.getStackTrace()[0]));
			return List.of();
		}
	}

	/** Names a rule as failed, from now on. */
	void fail(String rule, String reason) {
		failures.putIfAbsent(rule, reason);
	}

	/** Why a rule has failed, if it has. */
	Optional<String> failure(String rule) {
		return Optional.ofNullable(failures.get(rule));
	}
}
