/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.serial.SerialLineFigures;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * The reports of other ships go over a line that cannot carry them in busy waters.
 */
public final class AisOnSlowLine implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/ais-on-slow-line", "AIS on a slow line", Severity.ERROR,
				"line {line} brings AIS at {rate}; with both channels full it would be filled to {share}, and reports of ships are lost",
				"ITU-R M.1371, slots of a channel (from memory), with sentences of 49 characters: 75 a second need 38400 bit/s");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (SerialLineFigures line : boat.figures().serialLines()) {
			line.ais().filter(ais -> !ais.fits().orElse(true)).ifPresent(ais -> {
				Finding.Builder finding = boat.finding(line.line().origin());
				LineAtRate.faster(line).ifPresent(finding::fix);
				findings.add(finding
						.value("line", line.line().origin().simpleName())
						.value("rate", line.rate().rate().orElseThrow())
						.value("share", ais.taken().orElseThrow())
						.build());
			});
		}
		return findings;
	}
}
