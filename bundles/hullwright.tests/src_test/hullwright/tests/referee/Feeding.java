/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import hullwright.tests.referee.DescribedBoat.Fitted;
import hullwright.tests.referee.DescribedBoat.Net;

/**
 * Counts how a described boat is fed.
 */
final class Feeding {

	private Feeding() {
	}

	/** How often a supply enters a network. */
	static int entries(Net net) {
		return net.feeds().stream().mapToInt(feed -> feed.supplies().size()).sum()
				+ net.backbone().stream().mapToInt(item -> item instanceof Fitted fitted ? fitted.from().size() : 0).sum();
	}

	/** In how many stretches isolators and taps break the supply conductor of its backbone. */
	static int sections(Net net) {
		return 1 + (int) net.backbone().stream().filter(item -> breaks(item)).count();
	}

	private static boolean breaks(DescribedBoat.Item item) {
		if (!(item instanceof Fitted fitted)) {
			return false;
		}
		// a tap that feeds both its sides from one supply joins what it breaks
		return fitted.kind() instanceof PartKind.Isolator isolator && isolator.breaksSupply()
				|| fitted.kind() instanceof PartKind.Tap tap && tap.breaksSupply() && (tap.feeds() != PartKind.Tap.Feeds.BOTH || fitted.from().size() > 1);
	}

	/** How many devices on networks have a supply of their own whose negative is not isolated. */
	static long secondNegatives(DescribedBoat boat) {
		return boat.devices().stream().filter(device -> !device.ownFeeds().isEmpty() && device.kind().own().filter(own -> !own.isolated()).isPresent()).count();
	}

	/** How many devices join the returns of two networks. */
	static long bridges(DescribedBoat boat) {
		return boat.devices().stream().filter(device -> device.kind().lead().isEmpty() && !device.kind().portsApart())
				.filter(device -> boat.networks().stream().filter(net -> net.drops().stream().anyMatch(drop -> drop.device().equals(device.name()))).count() == 2)
				.count();
	}
}
