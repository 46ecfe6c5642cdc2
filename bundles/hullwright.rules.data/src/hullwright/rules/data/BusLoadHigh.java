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
 * What is sent regularly takes much of a bus.
 */
public final class BusLoadHigh implements BoatRule {

	private static final String PRACTICE = "common practice: half of a bus for what is sent regularly, attention from 70 % on";

	@Override
	public RuleDescription description() {
		return RuleDescription.banded("data/bus-load-high", "Bus load high",
				"what is sent regularly takes {load} of {network}; the limit is {limit}",
				new Band(Severity.ADVICE, new Ratio(0.5), PRACTICE), new Band(Severity.WARNING, new Ratio(0.7), PRACTICE));
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		List<Finding> findings = new ArrayList<>();
		for (BusFigures bus : boat.figures().buses()) {
			Ratio load = new Ratio(bus.load().regular().typicalShareOf(bus.load().bus()));
			boat.bandOf(load).ifPresent(band -> findings.add(boat.finding(onBoard.origin(bus.traffic().network()), band)
					.value("load", load)
					.value("network", InWords.name(bus.traffic().network()))
					.build()));
		}
		return findings;
	}
}
