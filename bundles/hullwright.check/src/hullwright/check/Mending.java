/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.rules.Finding;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.FixProposal;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Mends texts by the fixes of their findings. One change is made after the other with a check between, so that changes which
 * touch the same place do not harm each other.
 */
public final class Mending {

	/** A person chooses among a few; a rule may propose more, since not all of them mend. */
	private static final int MOST_CHOICES = 3;

	private final Checker checker;

	/** Mends with the rules of an engine. */
	public Mending(Checker checker) {
		this.checker = checker;
	}

	/**
	 * What became of a project.
	 *
	 * @param snapshot the project afterwards
	 * @param made what was changed, in that order
	 * @param left what could not be mended though it was asked for
	 */
	public record Mended(Snapshot snapshot, List<Made> made, List<Left> left) {

		public Mended {
			made = List.copyOf(made);
			left = List.copyOf(left);
		}
	}

	/** A finding and the change that removed it. */
	public record Made(ReportedFinding finding, FixProposal proposal) {
	}

	/** A finding that stays, with the reason in words. */
	public record Left(ReportedFinding finding, String reason) {
	}

	private record Matter(String rule, String element, String key) {

		static Matter of(Finding finding) {
			return new Matter(finding.rule(), finding.element(), finding.key());
		}
	}

	/**
	 * Applies the fixes that leave the boat as it is, and design changes for rules that are named. Where a finding can be mended
	 * in several ways a person must choose, so it is left.
	 *
	 * @param design the ids of the rules whose design changes are wanted
	 */
	public Mended mend(CheckRequest request, Set<String> design) {
		List<Made> made = new ArrayList<>();
		List<Left> left = new ArrayList<>();
		Set<Matter> seen = new HashSet<>();
		CheckRequest now = request;
		CheckReport report = checker.check(now);
		for (Optional<ReportedFinding> next = next(report, design, seen); next.isPresent(); next = next(report, design, seen)) {
			ReportedFinding finding = next.get();
			seen.add(Matter.of(finding.finding()));
			List<FixProposal> proposals = tried(now, report, finding).stream().filter(each -> isWanted(each.reach(), finding, design)).toList();
			if (proposals.size() == 1) {
				made.add(new Made(finding, proposals.get(0)));
				now = now.on(FixRendering.apply(now.snapshot(), proposals.get(0)));
				report = checker.check(now);
			} else {
				left.add(new Left(finding, proposals.isEmpty() ? "no change mends it without another finding as bad"
						: "it can be mended in " + proposals.size() + " ways: " + String.join("; ", proposals.stream().map(FixProposal::title).toList())));
			}
		}
		return new Mended(now.snapshot(), made, left);
	}

	private static Optional<ReportedFinding> next(CheckReport report, Set<String> design, Set<Matter> seen) {
		return report.findings().stream()
				.filter(each -> !seen.contains(Matter.of(each.finding())))
				.filter(each -> each.finding().fixes().stream().anyMatch(fix -> isWanted(fix.reach(), each, design)))
				.findFirst();
	}

	private static boolean isWanted(Fix.Reach reach, ReportedFinding finding, Set<String> design) {
		return reach == Fix.Reach.SAFE || design.contains(finding.finding().rule());
	}

	/** The first few fixes of a finding that remove it and add none that weighs as much or more. */
	List<FixProposal> proposals(CheckRequest request, ReportedFinding reported) {
		return reported.finding().fixes().isEmpty() ? List.of() : tried(request, checker.check(request), reported);
	}

	private List<FixProposal> tried(CheckRequest request, CheckReport before, ReportedFinding reported) {
		return checker.rendered(request, reported).stream().filter(proposal -> mends(request, before, reported.finding(), proposal))
				.limit(MOST_CHOICES).toList();
	}

	private boolean mends(CheckRequest request, CheckReport before, Finding finding, FixProposal proposal) {
		CheckReport after = checker.check(request.on(FixRendering.apply(request.snapshot(), proposal)));
		return after.findings().stream().filter(remaining -> remaining.finding().severity().compareTo(finding.severity()) >= 0)
				.noneMatch(remaining -> remaining.finding().isSameMatter(finding) || isNew(remaining, before));
	}

	/** Whether a change brought a finding; what nobody looked for before, because of a problem of the text, was there all the time. */
	private static boolean isNew(ReportedFinding remaining, CheckReport before) {
		String series = remaining.occurrence().series();
		return (series.isEmpty() || before.series().stream().anyMatch(looked -> looked.series().equals(series)))
				&& before.findings().stream().noneMatch(old -> old.finding().isSameMatter(remaining.finding()));
	}
}
