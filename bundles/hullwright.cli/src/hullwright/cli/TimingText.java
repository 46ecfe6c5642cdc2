/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.CheckClock;
import hullwright.check.LoadedRule;
import hullwright.check.RuleSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a check spent its time on, as a table: by stage, by rule and by the bundle that contributes rules.
 */
final class TimingText {

	private TimingText() {
	}

	/** @param rules those of each project */
	static String of(CheckClock clock, List<RuleSet> rules) {
		StringBuilder text = new StringBuilder();
		clock.stages().forEach((stage, nanos) -> line(text, stage.name().toLowerCase(java.util.Locale.ROOT), nanos));
		clock.rules().forEach((rule, nanos) -> line(text, "  rule " + rule, nanos));
		Map<String, Long> bundles = new TreeMap<>();
		clock.rules().forEach((rule, nanos) -> bundles.merge(rules.stream().flatMap(each -> each.rule(rule).stream()).findFirst().map(LoadedRule::contributor).orElse(rule), nanos, Long::sum));
		bundles.forEach((bundle, nanos) -> line(text, "  bundle " + bundle, nanos));
		return text.toString();
	}

	private static void line(StringBuilder text, String what, long nanos) {
		text.append("%-44s %10.3f ms%n".formatted(what, nanos / 1e6).replace(System.lineSeparator(), "\n"));
	}
}
