/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.SectionReading;
import hullwright.network.Network;
import hullwright.rules.BoatUnderCheck;
import java.util.List;

/**
 * The stretches of unbroken supply conductor of a network, whatever is switched on.
 */
final class SupplySections {

	private SupplySections() {
	}

	static List<SectionReading> of(BoatUnderCheck boat, Network network) {
		return boat.figures().electrics().states().get(0).lowest().sections().stream()
				.filter(each -> each.network().equals(network.name())).toList();
	}
}
