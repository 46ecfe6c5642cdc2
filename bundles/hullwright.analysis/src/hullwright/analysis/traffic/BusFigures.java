/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.network.Boat;
import hullwright.network.Network;
import java.util.List;

/**
 * The traffic of a network in figures. What bridges pass on from other networks is not counted.
 *
 * @param traffic what its devices send
 * @param load how much of the bus that takes
 * @param powerUp what the bus carries when the network is switched on
 * @param responses how long each message takes at most
 */
public record BusFigures(NetworkTraffic traffic, BusLoad load, PowerUp powerUp, ResponseTimes responses) {

	/** The figures of the networks of a boat, in the order of the text. */
	public static List<BusFigures> of(Boat boat) {
		return boat.networks().stream().map(BusFigures::of).toList();
	}

	private static BusFigures of(Network network) {
		NetworkTraffic traffic = NetworkTraffic.of(network);
		return new BusFigures(traffic, BusLoad.of(traffic, BusLoad.NMEA_2000), PowerUp.of(traffic, BusLoad.NMEA_2000),
				ResponseTimes.of(traffic, BusAssumptions.STANDARD));
	}
}
