/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.serial.LineUse;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.quantity.Ratio;
import hullwright.rules.Band;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * More is told on a serial line than it carries, or than practice leaves room for.
 */
public final class LineOverrun implements BoatRule {

	private static final Band PRACTICE = new Band(Severity.ADVICE, LineUse.PRACTICE, "common practice: fill a serial line to 80 %");
	private static final Band FULL = new Band(Severity.ERROR, new Ratio(1),
			"ten bits for a character (I183, public installation manuals): 480 characters a second at 4800 bit/s; above that sentences are lost");

	@Override
	public RuleDescription description() {
		return RuleDescription.banded("data/line-overrun", "Serial line overrun",
				"what is told regularly takes {share} of line {line}; the limit is {limit}", PRACTICE, FULL)
				.silencedBy("data/two-talkers", "data/ais-on-slow-line");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (SerialLineFigures line : boat.figures().serialLines()) {
			line.use().flatMap(use -> boat.bandOf(use.regular()).map(band -> {
				Finding.Builder finding = boat.finding(line.line().origin(), band);
				LineAtRate.faster(line).ifPresent(finding::fix);
				return finding
						.value("share", use.regular())
						.value("line", line.line().origin().simpleName())
						.build();
			})).ifPresent(findings::add);
		}
		return findings;
	}
}
