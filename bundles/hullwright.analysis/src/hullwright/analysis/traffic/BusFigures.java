/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.network.Boat;
import hullwright.network.data.KeyValue;
import hullwright.network.data.Pgn;
import hullwright.quantity.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
		Map<PassedMessage, Double> jitters = new IdentityHashMap<>();
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

	/** What a message is heard as. */
	private record Sent(String network, String sender, int pgn, Optional<KeyValue> value, Optional<Integer> instance) {
	}

	/** Takes the response times on one network as jitter on the next; tells whether any of them has grown. */
	private static boolean inherit(List<PassedMessage> passed, List<NetworkTraffic> traffic, List<ResponseTimes> responses, Map<PassedMessage, Double> jitters) {
		if (passed.stream().allMatch(each -> each.heard().isEmpty())) {
			return false;
		}
		Map<Sent, Double> worst = new HashMap<>();
		for (int i = 0; i < traffic.size(); i++) {
			for (MessageResponse each : responses.get(i).messages()) {
				BusMessage sent = each.message();
				if (each.time() instanceof ResponseTime.Bounded bounded) {
					worst.merge(new Sent(traffic.get(i).network(), sent.sender(), sent.pgn().number(), sent.value(), sent.instance()),
							bounded.worst().seconds(), Math::max);
				}
			}
		}
		boolean grown = false;
		for (PassedMessage each : passed) {
			if (each.heard().isPresent() && each.message().use().message() instanceof Pgn pgn) {
				double now = worst.getOrDefault(new Sent(each.heard().get().network(), each.heard().get().sender(), pgn.number(),
						each.message().use().value(), each.message().instance()), 0.0);
				grown |= now > jitters.getOrDefault(each, 0.0) + SETTLED;
				jitters.merge(each, now, Math::max);
			}
		}
		return grown;
	}
}
