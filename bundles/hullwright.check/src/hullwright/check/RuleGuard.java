/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Origin;
import hullwright.rules.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Runs rules so that one that fails does no harm: it is named and switched off for the rest of the session, the others run.
 */
final class RuleGuard {

	private final Map<String, String> failures = new ConcurrentHashMap<>();
	private final Optional<RuleGuard> shared;
	private final Set<String> sharedRules;

	/** A guard of its own. */
	RuleGuard() {
		shared = Optional.empty();
		sharedRules = Set.of();
	}

	/** A guard that shares with others what happens to some of the rules. */
	RuleGuard(RuleGuard shared, Set<String> sharedRules) {
		this.shared = Optional.of(shared);
		this.sharedRules = sharedRules;
	}

	/**
	 * What a rule finds on a boat or a series, or nothing if it fails or has failed before.
	 *
	 * @param look lets the rule look at what it is about
	 * @param known whether a place is one of the texts that are checked
	 */
	List<Finding> run(LoadedRule rule, Supplier<List<Finding>> look, Predicate<Origin> known) {
		String id = rule.description().id();
		if (failure(id).isPresent()) {
			return List.of();
		}
		try {
			List<Finding> findings = look.get();
			if (findings == null) {
				fail(id, "it returned nothing instead of a list of findings");
				return List.of();
			}
			// a list of its own: theirs might change, or throw when it is read
			List<Finding> taken = new ArrayList<>(findings);
			Optional<String> wrong = taken.stream().flatMap(finding -> wrong(id, finding, known).stream()).findFirst();
			wrong.ifPresent(reason -> fail(id, reason));
			return wrong.isPresent() ? List.of() : taken;
		} catch (RuntimeException | Error e) {
			fail(id, e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ": " + e.getMessage())
					+ (e.getStackTrace().length == 0 ? "" : " at " + e.getStackTrace()[0]));
			return List.of();
		}
	}

	private static Optional<String> wrong(String id, Finding finding, Predicate<Origin> known) {
		if (finding == null) {
			return Optional.of("it reported nothing as a finding");
		} else if (!id.equals(finding.rule())) {
			return Optional.of("it reported a finding in the name of rule " + finding.rule());
		}
		return known.test(finding.origin()) ? Optional.empty()
				: Optional.of("it reported a finding at a place that is in none of the texts: " + finding.origin());
	}

	/** Names a rule as failed, from now on. */
	void fail(String rule, String reason) {
		if (sharedRules.contains(rule)) {
			shared.orElseThrow().fail(rule, reason);
		} else {
			failures.putIfAbsent(rule, reason);
		}
	}

	/** Why a rule has failed, if it has. */
	Optional<String> failure(String rule) {
		return sharedRules.contains(rule) ? shared.orElseThrow().failure(rule) : Optional.ofNullable(failures.get(rule));
	}
}
