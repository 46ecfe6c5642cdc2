/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.PortRef;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Something of a network that starts or ends at a part by name.
 *
 * @param kind what it is, for people
 * @param origin it, and its place in the text
 * @param port where it wants to be plugged in
 * @param part the part of this boat that bears this name; none if the boat does not have it
 */
record PortClaim(String kind, Origin origin, PortRef port, Optional<Fitting> part) {

	/** What a network plugs in, in the order drops, feeds, joins, caps. */
	static List<PortClaim> of(Network network) {
		Map<String, Fitting> fitted = new HashMap<>();
		Stream.concat(network.backbones().stream().flatMap(backbone -> backbone.elements().stream()), network.drops().stream().flatMap(drop -> drop.legs().stream()))
				.filter(Fitting.class::isInstance).map(Fitting.class::cast).forEach(fitting -> fitted.putIfAbsent(fitting.name(), fitting));
		List<PortClaim> claims = new ArrayList<>();
		network.drops().forEach(drop -> claims.add(of(fitted, "drop " + drop.origin().simpleName(), drop.origin(), drop.from())));
		network.feeds().forEach(feed -> claims.add(of(fitted, "feed " + feed.origin().simpleName(), feed.origin(), feed.from())));
		network.joins().forEach(join -> Stream.of(join.from(), join.to())
				.forEach(end -> claims.add(of(fitted, join.origin().simpleName(), join.origin(), end))));
		network.caps().forEach(cap -> claims.add(of(fitted, "cap " + cap.cap().identity().name(), cap.origin(), cap.port())));
		return claims;
	}

	private static PortClaim of(Map<String, Fitting> fitted, String kind, Origin origin, PortRef port) {
		return new PortClaim(kind, origin, port, Optional.ofNullable(fitted.get(port.part())));
	}

	/** The name of the part, as the text writes it. */
	String partName() {
		return Origin.nowhere(port.part()).simpleName();
	}
}
