/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.PortRef;
import java.util.ArrayList;
import java.util.List;
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
		List<PortClaim> claims = new ArrayList<>();
		network.drops().forEach(drop -> claims.add(of(network, "drop " + drop.origin().simpleName(), drop.origin(), drop.from())));
		network.feeds().forEach(feed -> claims.add(of(network, "feed " + feed.origin().simpleName(), feed.origin(), feed.from())));
		network.joins().forEach(join -> Stream.of(join.from(), join.to())
				.forEach(end -> claims.add(of(network, join.origin().simpleName(), join.origin(), end))));
		network.caps().forEach(cap -> claims.add(of(network, "cap " + cap.cap().identity().name(), cap.origin(), cap.port())));
		return claims;
	}

	private static PortClaim of(Network network, String kind, Origin origin, PortRef port) {
		Stream<Element> elements = Stream.concat(network.backbones().stream().flatMap(backbone -> backbone.elements().stream()),
				network.drops().stream().flatMap(drop -> drop.legs().stream()));
		return new PortClaim(kind, origin, port, elements.filter(each -> each.name().equals(port.part())).filter(Fitting.class::isInstance)
				.map(Fitting.class::cast).findFirst());
	}

	/** The name of the part, as the text writes it. */
	String partName() {
		return port.part().substring(port.part().lastIndexOf('.') + 1);
	}
}
