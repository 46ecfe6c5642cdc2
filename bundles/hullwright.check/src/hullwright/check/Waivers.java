/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Waiver;
import hullwright.resolve.SeriesPlan;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.SetAside;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The waivers of the series that are checked: which findings they set aside, and which of them do not hold.
 */
final class Waivers {

	private final List<Waiver> waivers = new ArrayList<>();
	private final Set<Waiver> used = new HashSet<>();
	private final LocalDate asOf;

	Waivers(List<SeriesPlan> series, LocalDate asOf) {
		series.forEach(each -> waivers.addAll(each.waivers()));
		this.asOf = asOf;
	}

	/** Why a finding of a rule does not count, if a waiver says so. */
	Optional<SetAside.Why> of(ReportedFinding reported) {
		Finding finding = reported.finding();
		List<Waiver> about = waivers.stream().filter(each -> each.rule().equals(finding.rule()) && each.element().equals(finding.element())).toList();
		used.addAll(about);
		return about.stream().filter(each -> holds(each) && hasReason(each)).findFirst()
				.map(each -> new SetAside.Waived(each.reason(), each.until(), each.origin()));
	}

	private boolean holds(Waiver waiver) {
		return waiver.until().map(last -> !asOf.isAfter(last)).orElse(true);
	}

	private static boolean hasReason(Waiver waiver) {
		return !waiver.reason().isBlank();
	}

	/**
	 * What is wrong with the waivers, after all findings have been asked for.
	 *
	 * @param unknown whether there is no rule with an id
	 * @param looked whether a rule has looked at every boat, so that a waiver without its finding has no use
	 */
	List<Finding> problems(Predicate<String> unknown, Predicate<String> looked) {
		List<Finding> problems = new ArrayList<>();
		for (Waiver waiver : waivers) {
			if (unknown.test(waiver.rule())) {
				problems.add(problem(ProjectProblem.WAIVER_UNKNOWN_RULE, Severity.ERROR, waiver, "there is no rule '" + waiver.rule() + "' to waive"));
			} else if (!hasReason(waiver)) {
				problems.add(problem(ProjectProblem.WAIVER_WITHOUT_REASON, Severity.ERROR, waiver,
						"the waiver of " + waiver.rule() + " gives no reason, so it does not count"));
			} else if (!holds(waiver)) {
				problems.add(problem(ProjectProblem.WAIVER_EXPIRED, Severity.WARNING, waiver,
						"the waiver of " + waiver.rule() + " on " + waiver.element() + " ended on " + waiver.until().orElseThrow()));
			} else if (!used.contains(waiver) && looked.test(waiver.rule())) {
				problems.add(problem(ProjectProblem.WAIVER_UNUSED, Severity.WARNING, waiver,
						waiver.rule() + " finds nothing on " + waiver.element() + ", so there is nothing to waive"));
			}
		}
		return problems;
	}

	private static Finding problem(String rule, Severity severity, Waiver waiver, String message) {
		return Finding.ofText(rule, severity, waiver.origin(), message, List.of());
	}
}
