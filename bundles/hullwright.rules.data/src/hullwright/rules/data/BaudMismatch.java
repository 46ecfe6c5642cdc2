/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialProblem;
import hullwright.network.DevicePortRef;
import hullwright.quantity.BitRate;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The ends of a serial line cannot signal at one rate.
 */
public final class BaudMismatch implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/baud-mismatch", "Ends of a line at different rates", Severity.ERROR,
				"{end} signals at {possible}, and line {line} at {rate}",
				"digital-interface appendices of public installation manuals (I183): 4800 bit/s, or 38400 bit/s on fast lines, the same at both ends");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (SerialLineFigures line : boat.figures().serialLines()) {
			for (SerialProblem problem : line.problems()) {
				if (problem instanceof SerialProblem.RateNotPossible wrong) {
					findings.add(finding(boat, line, wrong.end(), wrong.possible(), wrong.rate().toString()));
				} else if (problem instanceof SerialProblem.NoCommonRate none) {
					SerialProblem.PossibleRates first = none.ends().get(0);
					findings.add(finding(boat, line, first.end(), first.rates(), none.ends().stream().skip(1)
							.map(each -> InWords.rates(each.rates()) + " at " + InWords.port(each.end())).distinct().collect(Collectors.joining(", "))));
				} else if (problem instanceof SerialProblem.PortAtTwoRates two) {
					findings.add(finding(boat, line, two.talker(), List.of(), "a rate other than that of " + InWords.names(two.otherLines())));
				}
			}
		}
		return findings;
	}

	private static Finding finding(BoatUnderCheck boat, SerialLineFigures line, DevicePortRef end, List<BitRate> possible, String rate) {
		return boat.finding(line.line().origin())
				.key(InWords.port(end))
				.value("end", InWords.port(end))
				.value("possible", possible.isEmpty() ? "one rate" : InWords.rates(possible))
				.value("line", line.line().origin().simpleName())
				.value("rate", rate)
				.build();
	}
}
