/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;

/**
 * The breaker that feeds a network feeds heavy consumers, too.
 */
public final class SharedBreaker implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/shared-breaker", "Feed shared with heavy consumers", Severity.WARNING,
				"{supply} feeds the network and {consumers}",
				"display installation manuals (N2-E) and general cabling guidance (EMC-A): own feed, not shared with autopilots, thrusters or other heavy consumers");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return FeedingSupplies.of(boat).stream().filter(supply -> !supply.sharedWith().isEmpty())
				.map(supply -> boat.finding(supply.origin())
						.value("supply", ShortName.of(supply.name()))
						.value("consumers", String.join(", ", supply.sharedWith()))
						.build()).toList();
	}
}
