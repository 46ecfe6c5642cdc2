/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialProblem;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * More than one output drives a line or an input.
 */
public final class TwoTalkers implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/two-talkers", "Two talkers on one line", Severity.ERROR,
				"{talkers} drive against each other on line {line}; a line has one talker",
				"digital-interface appendices of public installation manuals (I183): one talker, several listeners on a line");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (SerialLineFigures line : boat.figures().serialLines()) {
			for (SerialProblem problem : line.problems()) {
				if (problem instanceof SerialProblem.SeveralTalkers several) {
					findings.add(finding(boat, line, InWords.ports(several.talkers()), "line"));
				} else if (problem instanceof SerialProblem.InputShared shared) {
					findings.add(finding(boat, line, "lines " + InWords.names(shared.otherLines()) + " and this one at input " + InWords.port(shared.listener()),
							InWords.port(shared.listener())));
				} else if (problem instanceof SerialProblem.HearsItself itself) {
					findings.add(finding(boat, line, "the output and the input of " + InWords.name(itself.device()), "itself"));
				}
			}
		}
		return findings;
	}

	private static Finding finding(BoatUnderCheck boat, SerialLineFigures line, String talkers, String key) {
		return boat.finding(line.line().origin()).key(key).value("talkers", talkers).value("line", line.line().origin().simpleName()).build();
	}
}
