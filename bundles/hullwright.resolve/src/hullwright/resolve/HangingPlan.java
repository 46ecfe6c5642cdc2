/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.CappedPort;
import hullwright.network.Drop;
import hullwright.network.Feed;
import hullwright.network.FittedDevice;
import hullwright.network.Join;
import hullwright.network.PortRef;
import hullwright.network.part.Cable;
import hullwright.network.part.Cap;
import hullwright.spec.Capping;
import hullwright.spec.NetworkElement;
import hullwright.spec.PortReference;
import hullwright.spec.WhenElements;

/**
 * What hangs on a network, on some boats: drops, feeds, caps and joints.
 */
final class HangingPlan {

	private final String network;
	private final Optional<Cable> usualCable;
	private final Copying copying;
	private final List<WhenFitted<DropPlan>> drops = new ArrayList<>();
	private final List<WhenFitted<Feed>> feeds = new ArrayList<>();
	private final List<WhenFitted<CappedPort>> caps = new ArrayList<>();
	private final List<WhenFitted<Join>> joins = new ArrayList<>();

	HangingPlan(String network, Optional<Cable> usualCable, Copying copying) {
		this.network = network;
		this.usualCable = usualCable;
		this.copying = copying;
	}

	void add(List<? extends NetworkElement> elements, WhenFitted.Blocks blocks) {
		for (NetworkElement element : elements) {
			if (element instanceof WhenElements block) {
				add(block.getElements(), blocks.when(block.getCondition()));
				add(block.getOtherwise(), blocks.otherwise(block.getCondition()));
			} else if (element instanceof hullwright.spec.Drop drop) {
				// the condition of a drop is that of its device: the cable may be there before
				drops.add(WhenFitted.under(blocks, null, DropPlan.of(drop, network, usualCable, copying)));
			} else if (element instanceof hullwright.spec.Feed feed) {
				feeds.add(WhenFitted.under(blocks, feed.getCondition(), feed(feed)));
			} else if (element instanceof Capping capping) {
				copying.parts().of(capping.getType()).ifPresent(cap -> capping.getPorts().forEach(port -> caps.add(
						WhenFitted.under(blocks, capping.getCondition(), capped(port, (Cap) cap)))));
			} else if (element instanceof hullwright.spec.Join join) {
				joins.add(WhenFitted.under(blocks, join.getCondition(), join(join)));
			}
		}
	}

	private Feed feed(hullwright.spec.Feed feed) {
		PortRef from = DropPlan.port(feed.getFrom(), network);
		String name = network + "." + (feed.getName() != null ? feed.getName() : "feed-" + said(feed.getFrom()));
		return new Feed(name, from, RunPlan.legs(feed.getLegs(), name, network, usualCable, copying),
				feed.getSupplies().stream().map(copying.names()::of).toList(), feed.isEarthsShield(), Copying.text(feed.getLabel()),
				copying.places().of(feed, name));
	}

	private CappedPort capped(PortReference port, Cap cap) {
		return new CappedPort(DropPlan.port(port, network), cap, copying.places().of(port, network + ".cap-" + said(port)));
	}

	private Join join(hullwright.spec.Join join) {
		String name = network + ".join-" + said(join.getFrom()) + "-to-" + said(join.getTo());
		return new Join(name, DropPlan.port(join.getFrom(), network), RunPlan.legs(join.getLegs(), name, network, usualCable, copying),
				DropPlan.port(join.getTo(), network), copying.places().of(join, name));
	}

	private static String said(PortReference port) {
		return port.getPart().getName() + (port.getPort() == null ? "" : "-" + port.getPort());
	}

	/** What of it a boat has, not yet laid. */
	void addTo(Hanging hanging, Order order, HullPlan hull, Map<String, FittedDevice> otherDevices) {
		drops.stream().filter(each -> each.on(order)).forEach(each -> each.item().on(order, hull, otherDevices).ifPresent(hanging.drops()::add));
		feeds.stream().filter(each -> each.on(order) && !hull.removes(each.item().name())).forEach(each -> hanging.feeds().add(each.item()));
		caps.stream().filter(each -> each.on(order)).forEach(each -> hanging.caps().add(each.item()));
		joins.stream().filter(each -> each.on(order)).forEach(each -> hanging.joins().add(each.item()));
	}

	/** What hangs on the network of one boat. */
	record Hanging(List<Drop> drops, List<Feed> feeds, List<CappedPort> caps, List<Join> joins) {

		static Hanging nothing() {
			return new Hanging(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
		}
	}
}
