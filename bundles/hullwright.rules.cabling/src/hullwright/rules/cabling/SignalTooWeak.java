/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.SignalLevel;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A dominant level arrives so weak at some device that it may not be taken for one.
 */
public final class SignalTooWeak implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/signal-too-weak", "Signal too weak", Severity.ERROR,
				"{receiver} hears {sender} with {level} only; {limit} are needed",
				"ISO 11898-2: receivers take 0.9 V and more as dominant (from memory)")
				.silencedBy("cabling/terminator-missing", "cabling/terminator-too-many", "cabling/terminator-misplaced", "cabling/terminator-on-drop",
						"cabling/terminator-value", "cabling/backbone-too-long", "cabling/several-backbones");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (int number = 0; number < boat.boat().networks().size(); number++) {
			Network network = boat.boat().networks().get(number);
			Origin line = network.backbones().isEmpty() ? network.origin() : network.backbones().get(0).origin();
			boat.figures().lines().get(number).levels().filter(levels -> levels.worst().margin().si() < 0)
					.ifPresent(levels -> findings.add(finding(boat, line, levels.worst())));
		}
		return findings;
	}

	private static Finding finding(BoatUnderCheck boat, Origin line, SignalLevel worst) {
		return boat.finding(line)
				.value("receiver", Origin.nowhere(worst.receiver()).simpleName())
				.value("sender", Origin.nowhere(worst.sender()).simpleName())
				.value("level", worst.heard())
				.value("limit", SignalLevel.THRESHOLD)
				.build();
	}
}
