/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.network.Boat;
import hullwright.quantity.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The traffic of a network in figures.
 *
 * @param traffic what is sent on it
 * @param load how much of the bus that takes
 * @param powerUp what the bus carries when the network is switched on
 * @param responses how long each message takes at most
 */
public record BusFigures(NetworkTraffic traffic, BusLoad load, PowerUp powerUp, ResponseTimes responses) {

	/**
	 * What a bridge passes on differs by what it took to arrive, which depends on the other network, and so on. Each round takes in
	 * one bridge more; times only grow, so a bound that still moves after so many is none.
	 */
	private static final int ROUNDS = 8;

	/** Changes below this are rounding, in seconds: a hundredth of a bit. */
	private static final double SETTLED = 4e-8;

	/** The figures of the networks of a boat, in the order of the text, of what their devices send of their own. */
	public static List<BusFigures> of(Boat boat) {
		return of(boat, List.of());
	}

	/**
	 * The figures of the networks of a boat, in the order of the text.
	 *
	 * @param passed what bridges and gateways bring into them
	 */
	public static List<BusFigures> of(Boat boat, List<PassedMessage> passed) {
		Map<PassedMessage, Double> jitters = new HashMap<>();
		List<NetworkTraffic> traffic = traffic(boat, passed, jitters);
		List<ResponseTimes> responses = responses(traffic);
		for (int round = 0; round < ROUNDS && inherit(passed, traffic, responses, jitters); round++) {
			traffic = traffic(boat, passed, jitters);
			responses = responses(traffic);
		}
		List<BusFigures> figures = new ArrayList<>();
		for (int i = 0; i < traffic.size(); i++) {
			figures.add(new BusFigures(traffic.get(i), BusLoad.of(traffic.get(i), BusLoad.NMEA_2000), PowerUp.of(traffic.get(i), BusLoad.NMEA_2000),
					responses.get(i)));
		}
		return figures;
	}

	private static List<NetworkTraffic> traffic(Boat boat, List<PassedMessage> passed, Map<PassedMessage, Double> jitters) {
		return boat.networks().stream().map(each -> NetworkTraffic.of(each, passed, one -> new Duration(jitters.getOrDefault(one, 0.0)))).toList();
	}

	private static List<ResponseTimes> responses(List<NetworkTraffic> traffic) {
		return traffic.stream().map(each -> ResponseTimes.of(each, BusAssumptions.STANDARD)).toList();
	}

	/** Takes the response times on one network as jitter on the next; tells whether any of them has grown. */
	private static boolean inherit(List<PassedMessage> passed, List<NetworkTraffic> traffic, List<ResponseTimes> responses, Map<PassedMessage, Double> jitters) {
		boolean grown = false;
		for (PassedMessage each : passed) {
			for (int i = 0; i < traffic.size() && each.heard().isPresent(); i++) {
				if (traffic.get(i).network().equals(each.heard().get().network())) {
					double now = responses.get(i).messages().stream().filter(response -> isHeard(response.message(), each)).map(MessageResponse::time)
							.filter(ResponseTime.Bounded.class::isInstance).mapToDouble(time -> ((ResponseTime.Bounded) time).worst().seconds()).max().orElse(0);
					grown |= now > jitters.getOrDefault(each, 0.0) + SETTLED;
					jitters.merge(each, now, Math::max);
				}
			}
		}
		return grown;
	}

	private static boolean isHeard(BusMessage sent, PassedMessage passed) {
		return sent.sender().equals(passed.heard().orElseThrow().sender()) && sent.pgn().equals(passed.message().use().message())
				&& sent.value().equals(passed.message().use().value()) && sent.instance().equals(passed.message().instance());
	}
}
