/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.network.Boat;
import hullwright.network.Network;
import hullwright.quantity.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The traffic of a network in figures.
 *
 * @param traffic what is sent on it
 * @param load how much of the bus that takes
 * @param powerUp what the bus carries when the network is switched on
 * @param responses how long each message takes at most
 */
public record BusFigures(NetworkTraffic traffic, BusLoad load, PowerUp powerUp, ResponseTimes responses) {

	/** The figures of the networks of a boat, in the order of the text, of what their devices send of their own. */
	public static List<BusFigures> of(Boat boat) {
		return of(boat, List.of(), carrier -> Optional.of(new Duration(0)));
	}

	/**
	 * The figures of the networks of a boat, in the order of the text.
	 *
	 * @param passed what bridges and gateways bring into them
	 * @param carriers how long what goes over a serial line or a wireless hop may take, by its qualified name; nothing if there is no
	 *        bound
	 */
	public static List<BusFigures> of(Boat boat, List<PassedMessage> passed, Function<String, Optional<Duration>> carriers) {
		PassedJitter jitter = new PassedJitter(passed, carriers);
		List<NetworkTraffic> traffic;
		List<ResponseTimes> responses;
		do {
			traffic = new ArrayList<>();
			responses = new ArrayList<>();
			for (Network network : boat.networks()) {
				traffic.add(NetworkTraffic.of(network, passed, jitter::of));
				responses.add(ResponseTimes.of(traffic.get(traffic.size() - 1), BusAssumptions.STANDARD));
			}
		} while (jitter.growsWith(responses));
		List<BusFigures> figures = new ArrayList<>();
		for (int i = 0; i < traffic.size(); i++) {
			figures.add(new BusFigures(traffic.get(i), BusLoad.of(traffic.get(i), BusLoad.NMEA_2000), PowerUp.of(traffic.get(i), BusLoad.NMEA_2000),
					responses.get(i)));
		}
		return figures;
	}
}
