/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import hullwright.network.CappedPort;
import hullwright.network.Feed;
import hullwright.network.Join;
import hullwright.network.PortRef;
import hullwright.network.part.Cable;
import hullwright.network.part.Cap;
import hullwright.spec.Capping;
import hullwright.spec.NetworkElement;
import hullwright.spec.PortReference;
import hullwright.spec.WhenElements;

/**
 * Copies what hangs on a network out of the spec.
 */
final class HangingCopy {

	private final String network;
	private final Optional<Cable> usualCable;
	private final Copying copying;
	private final List<WhenFitted<DropPlan>> drops = new ArrayList<>();
	private final List<WhenFitted<Feed>> feeds = new ArrayList<>();
	private final List<WhenFitted<CappedPort>> caps = new ArrayList<>();
	private final List<WhenFitted<Join>> joins = new ArrayList<>();

	HangingCopy(String network, Optional<Cable> usualCable, Copying copying) {
		this.network = network;
		this.usualCable = usualCable;
		this.copying = copying;
	}

	/** The plan of what the text hangs on the network. */
	HangingPlan of(List<? extends NetworkElement> elements) {
		add(elements, WhenFitted.Blocks.NONE);
		return new HangingPlan(drops, feeds, caps, joins);
	}

	private void add(List<? extends NetworkElement> elements, WhenFitted.Blocks blocks) {
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
}
