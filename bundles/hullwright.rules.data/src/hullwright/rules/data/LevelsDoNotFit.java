/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.serial.Joint;
import hullwright.analysis.serial.LevelFit;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A talker signals in a way that its listener is not made for.
 */
public final class LevelsDoNotFit implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/levels-do-not-fit", "Signal levels do not fit", Severity.WARNING,
				"{talker} into {listener}: {reason}",
				"public page on the electrical interface of NMEA 0183 and digital-interface appendices of public installation manuals (I183)")
				.silencedBy("data/two-talkers");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (SerialLineFigures line : boat.figures().serialLines()) {
			for (Joint joint : line.joints()) {
				boolean never = joint.level().verdict() == LevelFit.Verdict.DOES_NOT_FIT;
				if (never || joint.level().verdict() == LevelFit.Verdict.OUT_OF_STANDARD) {
					boolean borne = joint.level().reason() == LevelFit.Reason.RS232_WITHIN_15_V;
					findings.add((borne ? boat.advice(line.line().origin()) : boat.finding(line.line().origin()))
							.key(InWords.port(joint.talker()) + " to " + InWords.port(joint.other()))
							.value("talker", InWords.port(joint.talker()))
							.value("listener", InWords.port(joint.other()))
							.value("reason", words(joint.level().reason()))
							.build());
				}
			}
		}
		return findings;
	}

	private static String words(LevelFit.Reason reason) {
		return switch (reason) {
		case A_TO_SINGLE_INPUT -> "a pair into one wire is in no standard; the grounds have to be joined";
		case BELOW_THRESHOLD_OF_RS232 -> "0 and 5 V into an RS-232 input often works, but no standard covers it and nothing isolates";
		case RS232_WITHIN_15_V -> "RS-232 into such an input is in no standard; the listener withstands its 15 V";
		case OUTPUT_AGAINST_OUTPUT -> "two outputs drive against each other";
		case SAME_LEVEL, B_TO_GROUND_OF_TALKER, UNSTATED -> "they fit";
		};
	}
}
