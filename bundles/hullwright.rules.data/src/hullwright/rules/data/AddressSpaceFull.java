/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;

/**
 * More addresses are claimed on a network than there are.
 */
public final class AddressSpaceFull implements BoatRule {

	private static final int ADDRESSES = 252;

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/address-space-full", "More addresses than there are", Severity.ERROR,
				"the devices of {network} claim {claimed} addresses, and there are {available}",
				"from memory: addresses 0 to 251 can be claimed");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		return boat.figures().buses().stream().filter(bus -> bus.powerUp().addresses() > ADDRESSES)
				.map(bus -> boat.finding(onBoard.origin(bus.traffic().network()))
						.value("network", InWords.name(bus.traffic().network()))
						.value("claimed", bus.powerUp().addresses())
						.value("available", ADDRESSES)
						.build()).toList();
	}
}
