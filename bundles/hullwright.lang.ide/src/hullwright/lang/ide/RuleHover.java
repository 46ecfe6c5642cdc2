/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.check.LoadedRule;
import hullwright.check.RuleSet;
import hullwright.rules.Finding;
import hullwright.rules.report.ReportedFinding;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What stands behind a finding: the title of its rule, where its limit was read, and how its page is reached.
 */
final class RuleHover {

	private RuleHover() {
	}

	/** Lines for what was found at a place of a file; none if nothing was, or only something about the text itself. */
	static List<String> at(CheckedProject checked, RuleSet rules, String file, int offset) {
		return checked.report().findings().stream().map(ReportedFinding::finding)
				.filter(finding -> finding.origin().file().equals(file) && finding.origin().offset() <= offset && offset <= finding.origin().offset() + finding.origin().length())
				.map(finding -> line(finding, rules)).filter(Objects::nonNull).distinct().toList();
	}

	private static String line(Finding finding, RuleSet rules) {
		Optional<LoadedRule> rule = rules.rules().stream().filter(each -> each.description().id().equals(finding.rule())).findFirst();
		return rule.map(found -> found.description().title() + " (" + finding.rule() + ")" + (finding.source().isEmpty() ? "" : ", after " + finding.source())
				+ ". Its page: F1, or hullwright explain " + finding.rule()).orElse(null);
	}
}
