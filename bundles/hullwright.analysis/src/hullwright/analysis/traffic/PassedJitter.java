/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.analysis.traffic.PassedMessage.SentOn;
import hullwright.network.data.Pgn;
import hullwright.quantity.Duration;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * By how much the moments differ at which bridges and gateways have messages ready: by what these may have taken to arrive, which
 * depends on the traffic of the other network, and so on (holistic analysis of distributed systems, Tindell and Clark 1994, from
 * memory). It starts with none and grows in rounds until it settles; what has no bound, or does not settle, is late without bound.
 */
final class PassedJitter {

	/** Longer than any horizon: a message that may come so late has no bound, and neither has what it may precede. */
	private static final double WITHOUT_BOUND = 1e6;

	/** Each round takes in one bridge more, and few boats have three in a row; what still moves after so many is given up. */
	private static final int MOST_ROUNDS = 20;

	/** Changes below this are rounding, in seconds: a hundredth of a bit. */
	private static final double SETTLED = 4e-8;

	private final List<PassedMessage> passed;
	private final Function<String, Optional<Duration>> carriers;
	private final Map<PassedMessage, Double> seconds = new IdentityHashMap<>();
	private int rounds;

	/**
	 * @param carriers how long what goes over a serial line or a wireless hop may take, by its qualified name
	 */
	PassedJitter(List<PassedMessage> passed, Function<String, Optional<Duration>> carriers) {
		this.passed = passed;
		this.carriers = carriers;
		passed.forEach(each -> seconds.put(each, late(each, Map.of())));
	}

	Duration of(PassedMessage message) {
		return new Duration(seconds.getOrDefault(message, 0.0));
	}

	/** Takes in how long messages take on the networks; tells whether anything has grown by that. */
	boolean growsWith(List<ResponseTimes> responses) {
		if (passed.stream().allMatch(each -> each.heard().stream().allMatch(heard -> heard.sent().isEmpty()))) {
			return false;
		}
		rounds++;
		Map<SentOn, Double> taken = taken(responses);
		boolean grown = false;
		for (PassedMessage each : passed) {
			double before = seconds.get(each);
			double now = late(each, taken);
			if (now > before + SETTLED) {
				grown = true;
				seconds.put(each, rounds >= MOST_ROUNDS ? WITHOUT_BOUND : now);
			}
		}
		if (grown && rounds >= 2 * MOST_ROUNDS) {
			passed.forEach(each -> seconds.put(each, WITHOUT_BOUND));
		}
		return grown;
	}

	private static Map<SentOn, Double> taken(List<ResponseTimes> responses) {
		Map<SentOn, Double> taken = new HashMap<>();
		for (ResponseTimes network : responses) {
			for (MessageResponse each : network.messages()) {
				BusMessage sent = each.message();
				taken.merge(new SentOn(network.network(), sent.sender(), sent.pgn().number(), sent.value(), sent.instance()),
						each.time() instanceof ResponseTime.Bounded bounded ? bounded.worst().seconds() : WITHOUT_BOUND, Math::max);
			}
		}
		return taken;
	}

	/** What is left out of the traffic of a network has no figure there, and adds none here. */
	private double late(PassedMessage message, Map<SentOn, Double> taken) {
		if (!(message.message().use().message() instanceof Pgn)) {
			return 0;
		}
		double latest = 0;
		for (PassedMessage.Heard heard : message.heard()) {
			double one = heard.sent().map(sent -> taken.getOrDefault(sent, 0.0)).orElse(0.0);
			for (String each : heard.over()) {
				one += carriers.apply(each).map(Duration::seconds).orElse(WITHOUT_BOUND);
			}
			latest = Math.max(latest, one);
		}
		return Math.min(latest, WITHOUT_BOUND);
	}
}
