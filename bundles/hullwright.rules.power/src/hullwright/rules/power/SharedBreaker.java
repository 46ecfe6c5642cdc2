/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.network.part.OwnSupply;
import hullwright.network.power.Supply;
import hullwright.quantity.Current;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * The breaker that feeds a network feeds heavy consumers, too.
 */
public final class SharedBreaker implements BoatRule {

	private static final Parameter HEAVY = new Parameter("heavy", new Current(5), "what a device may draw from the breaker of a network beside it", "common practice");

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/shared-breaker", "Feed shared with heavy consumers", Severity.WARNING,
				"{supply} feeds the network and {consumers}",
				"display installation manuals (N2-E) and general cabling guidance (EMC-A): own feed, not shared with autopilots, thrusters or other heavy consumers").with(HEAVY);
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Current heavy = boat.parameter("heavy", Current.class);
		List<Finding> findings = new ArrayList<>();
		for (Supply supply : FeedingSupplies.of(boat)) {
			List<String> consumers = new ArrayList<>(supply.sharedWith());
			boat.boat().fittedDevices().stream()
					.filter(device -> device.settings().feeds().stream().anyMatch(feed -> feed.supply().equals(supply.name())))
					.filter(device -> device.model().power().ownSupply().flatMap(OwnSupply::draws).filter(draws -> draws.exceeds(heavy)).isPresent())
					.forEach(device -> consumers.add(ShortName.of(device.name())));
			if (!consumers.isEmpty()) {
				findings.add(boat.finding(supply.origin())
						.value("supply", ShortName.of(supply.name()))
						.value("consumers", String.join(", ", consumers))
						.build());
			}
		}
		return findings;
	}
}
