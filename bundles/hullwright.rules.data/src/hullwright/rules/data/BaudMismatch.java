/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialProblem;
import hullwright.quantity.BitRate;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The ends of a serial line cannot signal at one rate.
 */
public final class BaudMismatch implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/baud-mismatch", "Ends of a line at different rates", Severity.ERROR,
				"{end} at {possible}, and line {line} at {rate}",
				"digital-interface appendices of public installation manuals (I183): 4800 bit/s, or 38400 bit/s on fast lines, the same at both ends");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (SerialLineFigures line : boat.figures().serialLines()) {
			Map<List<BitRate>, List<SerialProblem.RateNotPossible>> wrong = line.problems().stream()
					.filter(SerialProblem.RateNotPossible.class::isInstance).map(SerialProblem.RateNotPossible.class::cast)
					.collect(Collectors.groupingBy(SerialProblem.RateNotPossible::possible, LinkedHashMap::new, Collectors.toList()));
			wrong.forEach((possible, ends) -> findings.add(finding(boat, line, InWords.list(ends.stream().map(each -> InWords.port(each.end())).toList()),
					possible, ends.get(0).rate().toString())));
			for (SerialProblem problem : line.problems()) {
				if (problem instanceof SerialProblem.NoCommonRate none) {
					SerialProblem.PossibleRates first = none.ends().get(0);
					findings.add(finding(boat, line, InWords.port(first.end()), first.rates(), none.ends().stream().skip(1)
							.map(each -> InWords.rates(each.rates()) + " at " + InWords.port(each.end())).distinct().collect(Collectors.joining(", "))));
				} else if (problem instanceof SerialProblem.PortAtTwoRates two) {
					findings.add(finding(boat, line, InWords.port(two.talker()), List.of(), "a rate other than that of " + InWords.names(two.otherLines())));
				}
			}
		}
		return findings;
	}

	private static Finding finding(BoatUnderCheck boat, SerialLineFigures line, String end, List<BitRate> possible, String rate) {
		Finding.Builder finding = boat.finding(line.line().origin());
		LineAtRate.shared(line).forEach(finding::fix);
		return finding
				.key(end)
				.value("end", end)
				.value("possible", possible.isEmpty() ? "one rate" : InWords.rates(possible))
				.value("line", line.line().origin().simpleName())
				.value("rate", rate)
				.build();
	}
}
