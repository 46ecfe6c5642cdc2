/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.traffic.BusFigures;
import hullwright.analysis.traffic.LeftOut;
import hullwright.network.data.MessageUse;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A device tells something that its carrier cannot carry, as its catalog or the text has it.
 */
public final class NotCarried implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/not-carried", "Message that cannot be carried", Severity.ERROR,
				"{device} tells {message}, and {reason}",
				"framing of fast packets (from memory, confirmed on the open CANboat sample logs, PGN-C): 223 bytes at most, 8 in a single frame");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		List<Finding> findings = new ArrayList<>();
		for (BusFigures bus : boat.figures().buses()) {
			bus.traffic().leftOut().stream().filter(each -> each.reason().isMistake())
					.forEach(each -> findings.add(finding(boat, onBoard, each.sender(), new MessageUse(each.pgn(), each.value()), words(each.reason()))));
		}
		return findings;
	}

	private static Finding finding(BoatUnderCheck boat, OnBoard onBoard, String device, MessageUse use, String reason) {
		return boat.finding(onBoard.origin(device)).key(use.toString())
				.value("device", InWords.name(device))
				.value("message", InWords.message(use))
				.value("reason", reason)
				.build();
	}

	private static String words(LeftOut.Reason reason) {
		return switch (reason) {
		case LENGTH_IMPOSSIBLE -> "its frames cannot carry what is so long";
		case INTERVAL_IMPOSSIBLE -> "its interval cannot be";
		case NUMBER_IMPOSSIBLE -> "no PGN has such a number";
		case EVENT_WITHOUT_LEAST_INTERVAL, TIMING_UNSTATED, FRAMING_UNSTATED, LENGTH_UNSTATED -> "too little is known of it";
		};
	}
}
