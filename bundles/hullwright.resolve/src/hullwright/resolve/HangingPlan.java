/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import hullwright.network.CappedPort;
import hullwright.network.Drop;
import hullwright.network.Feed;
import hullwright.network.FittedDevice;
import hullwright.network.Join;
import hullwright.network.PortRef;

/**
 * What hangs on a network, on some boats.
 *
 * @param drops the drops
 * @param feeds the supplies that enter through ports
 * @param caps the ports that are closed
 * @param joins cables from port to port
 */
record HangingPlan(List<WhenFitted<DropPlan>> drops, List<WhenFitted<Feed>> feeds, List<WhenFitted<CappedPort>> caps,
		List<WhenFitted<Join>> joins) {

	HangingPlan {
		drops = List.copyOf(drops);
		feeds = List.copyOf(feeds);
		caps = List.copyOf(caps);
		joins = List.copyOf(joins);
	}

	/** What of it a boat has, not yet laid. */
	Hanging on(Order order, HullPlan hull, Map<String, FittedDevice> otherDevices) {
		return new Hanging(
				fitted(drops, order).flatMap(drop -> drop.on(order, hull, otherDevices).stream()).toList(),
				fitted(feeds, order).filter(feed -> !hull.removes(feed.name())).map(feed -> new Feed(feed.name(), feed.from(),
						hull.changed(feed.legs()), feed.supplies(), feed.earthsShield(), feed.label(), feed.origin())).toList(),
				fitted(caps, order).toList(),
				fitted(joins, order).map(join -> new Join(join.name(), join.from(), hull.changed(join.legs()), join.to(), join.origin())).toList());
	}

	private static <T> Stream<T> fitted(List<WhenFitted<T>> some, Order order) {
		return some.stream().filter(each -> each.on(order)).map(WhenFitted::item);
	}

	/** What hangs on the network of one boat. */
	record Hanging(List<Drop> drops, List<Feed> feeds, List<CappedPort> caps, List<Join> joins) {

		/** This, and what a hull adds to it: where it plugs something into a capped port the cap comes off. */
		Hanging and(Hanging added) {
			Set<PortRef> used = new HashSet<>();
			added.drops.forEach(drop -> used.add(drop.from()));
			added.feeds.forEach(feed -> used.add(feed.from()));
			added.joins.forEach(join -> {
				used.add(join.from());
				used.add(join.to());
			});
			List<CappedPort> stillCapped = caps.stream().filter(cap -> !used.contains(cap.port())).toList();
			return new Hanging(both(drops, added.drops), both(feeds, added.feeds), both(stillCapped, added.caps), both(joins, added.joins));
		}

		private static <T> List<T> both(List<T> one, List<T> other) {
			return Stream.concat(one.stream(), other.stream()).toList();
		}
	}
}
