/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.wiring.SupplyEntry;
import hullwright.network.power.Supply;
import hullwright.rules.BoatUnderCheck;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The supplies that enter some network.
 */
final class FeedingSupplies {

	private FeedingSupplies() {
	}

	static List<Supply> of(BoatUnderCheck boat) {
		Set<String> entering = boat.figures().electrics().wiring().entries().stream().map(SupplyEntry::supply).collect(Collectors.toSet());
		return boat.boat().power().supplies().stream().filter(supply -> entering.contains(supply.name())).toList();
	}
}
