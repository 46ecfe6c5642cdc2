/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.Propagation;
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
 * A signal takes longer from one end of the line to the other than the bit timing allows.
 */
public final class PropagationTooLong implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/propagation-too-long", "Signal takes too long", Severity.ERROR,
				"a signal takes {delay} from {from} to {to}, {distance} away; the bit timing allows {limit}",
				"CAN specification 2.0, part A, section 8, and CiA DS-102 bit timing at 250 kbit/s (CAN-3); delays of transceivers from memory")
				.silencedBy("cabling/backbone-too-long", "cabling/several-backbones");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (int number = 0; number < boat.boat().networks().size(); number++) {
			Network network = boat.boat().networks().get(number);
			Origin line = network.backbones().isEmpty() ? network.origin() : network.backbones().get(0).origin();
			boat.figures().lines().get(number).propagation()
					.filter(propagation -> propagation.margin().seconds() < 0)
					.ifPresent(propagation -> findings.add(finding(boat, line, propagation)));
		}
		return findings;
	}

	private static Finding finding(BoatUnderCheck boat, Origin line, Propagation propagation) {
		return boat.finding(line)
				.value("delay", propagation.delay())
				.value("from", Origin.nowhere(propagation.from()).simpleName())
				.value("to", Origin.nowhere(propagation.to()).simpleName())
				.value("distance", propagation.distance())
				.value("limit", propagation.allowed())
				.build();
	}
}
