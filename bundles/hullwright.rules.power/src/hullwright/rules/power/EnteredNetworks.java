/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.wiring.SupplyEntry;
import hullwright.network.Element;
import hullwright.network.Network;
import hullwright.rules.BoatUnderCheck;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * What is on the networks that a supply enters.
 */
final class EnteredNetworks {

	private EnteredNetworks() {
	}

	/** The qualified names of the devices and of the parts of the backbones there. */
	static Set<String> of(BoatUnderCheck boat, String supply) {
		Set<String> names = new LinkedHashSet<>();
		for (SupplyEntry entry : boat.figures().electrics().wiring().entries()) {
			if (entry.supply().equals(supply)) {
				Network network = boat.boat().networks().get(entry.network());
				names.add(entry.part());
				network.backbones().forEach(backbone -> backbone.elements().stream().map(Element::name).forEach(names::add));
				boat.figures().electrics().wiring().devices().stream().filter(device -> device.network() == entry.network())
						.forEach(device -> names.add(device.device().name()));
			}
		}
		return names;
	}
}
