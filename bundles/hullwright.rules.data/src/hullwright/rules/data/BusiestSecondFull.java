/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.traffic.BusFigures;
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
 * All that may fall together within one second fills a bus, though it is not busy on average.
 */
public final class BusiestSecondFull implements BoatRule {

	private static final String MEASURED = "common practice: no second fuller than the busiest of a working boat of 43 devices, 89.5 % in the open "
			+ "CANboat sample logs (PGN-C)";

	@Override
	public RuleDescription description() {
		return RuleDescription.banded("data/busiest-second", "Busiest second full",
				"what may fall together within one second takes {share} of {network}; the limit is {limit}",
				new Band(Severity.ADVICE, new Ratio(0.9), MEASURED)).silencedBy("data/bus-load-high");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		List<Finding> findings = new ArrayList<>();
		for (BusFigures bus : boat.figures().buses()) {
			Ratio share = new Ratio(bus.load().busiestSecond().typicalShare());
			boat.bandOf(share).ifPresent(band -> findings.add(boat.finding(onBoard.origin(bus.traffic().network()), band)
					.value("share", share)
					.value("network", InWords.name(bus.traffic().network()))
					.build()));
		}
		return findings;
	}
}
