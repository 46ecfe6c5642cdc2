/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.report;

import hullwright.rules.Severity;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a check found, and what it did to find it.
 *
 * @param asOf the date that the check took for today
 * @param findings the findings, by file, place and rule; the same input gives the same order
 * @param setAside the findings that were made and do not count, in the same order
 * @param gaps why something could not be checked, in words; empty if everything was
 * @param rules what became of each rule, by id
 * @param series how much of each series was checked
 * @param files the files that were read
 * @param baseline what the findings were held against, if anything
 */
public record CheckReport(LocalDate asOf, List<ReportedFinding> findings, List<SetAside> setAside, List<String> gaps, List<RuleRun> rules, List<SeriesCoverage> series,
		List<SourceFile> files, Optional<BaselineUsed> baseline) {

	public CheckReport {
		findings = List.copyOf(findings);
		setAside = List.copyOf(setAside);
		gaps = List.copyOf(gaps);
		rules = List.copyOf(rules);
		series = List.copyOf(series);
		files = List.copyOf(files);
	}

	/** Whether everything was checked that was to be. */
	public boolean complete() {
		return gaps.isEmpty();
	}

	/** The severest severity among the findings, if there are any. */
	public Optional<Severity> worst() {
		return findings.stream().map(reported -> reported.finding().severity()).max(Severity::compareTo);
	}

	/** How many findings do not count for a kind of reason. */
	public long countSetAside(Class<? extends SetAside.Why> why) {
		return setAside.stream().filter(each -> why.isInstance(each.why())).count();
	}

	/** How many findings have a severity. */
	public long count(Severity severity) {
		return findings.stream().filter(reported -> reported.finding().severity() == severity).count();
	}
}
