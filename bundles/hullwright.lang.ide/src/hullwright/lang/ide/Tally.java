/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.rules.Severity;
import hullwright.rules.report.ReportedFinding;
import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How many findings there are of each severity.
 *
 * @param counts those that occur
 */
public record Tally(Map<Severity, Long> counts) {

	public Tally {
		counts = Map.copyOf(counts);
	}

	static Tally of(Collection<ReportedFinding> findings) {
		return new Tally(findings.stream().collect(Collectors.groupingBy(each -> each.finding().severity(), Collectors.counting())));
	}

	/** How many there are of a severity. */
	public long count(Severity severity) {
		return counts.getOrDefault(severity, 0L);
	}

	/** The severest severity that occurs. */
	public Optional<Severity> worst() {
		return counts.keySet().stream().max(Comparator.naturalOrder());
	}
}
