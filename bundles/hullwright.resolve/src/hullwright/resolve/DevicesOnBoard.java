/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Network;

/**
 * The devices of a boat, wherever they are.
 */
final class DevicesOnBoard {

	private DevicesOnBoard() {
	}

	/** Their qualified names. */
	static Set<String> names(List<Network> networks, Collection<FittedDevice> others) {
		Set<String> names = new HashSet<>();
		others.forEach(device -> names.add(device.name()));
		for (Network network : networks) {
			network.drops().forEach(drop -> drop.device().ifPresent(device -> names.add(device.name())));
			network.backbones().forEach(backbone -> backbone.elements().forEach(element -> {
				if (element instanceof Fitting fitting) {
					fitting.details().device().ifPresent(device -> names.add(device.name()));
				}
			}));
		}
		return names;
	}
}
