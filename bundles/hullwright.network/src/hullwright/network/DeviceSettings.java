/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;
import java.util.Optional;

import hullwright.network.data.Passing;
import hullwright.network.data.Taking;
import hullwright.network.data.Turning;
import hullwright.network.power.SupplyLead;

/**
 * How a device is set on this boat.
 *
 * @param deviceInstance its device instance, if the text says; apart from its data instances
 * @param feeds what feeds it apart from the network
 * @param takes whom it is set to listen to
 * @param turns what it turns: as its model does, unless the text sets it otherwise
 * @param passes what it passes: as its model does, unless the text sets it otherwise
 */
public record DeviceSettings(Optional<Integer> deviceInstance, List<OwnFeed> feeds, List<Taking> takes, List<Turning> turns,
		List<Passing> passes) {

	/** Nothing is said. */
	public static final DeviceSettings UNSTATED = new DeviceSettings(Optional.empty(), List.of(), List.of(), List.of(), List.of());

	/**
	 * What feeds a device apart from the network.
	 *
	 * @param supply the qualified name of the supply
	 * @param lead the wire to it, if the text says
	 */
	public record OwnFeed(String supply, Optional<SupplyLead> lead) {
	}

	public DeviceSettings {
		feeds = List.copyOf(feeds);
		takes = List.copyOf(takes);
		turns = List.copyOf(turns);
		passes = List.copyOf(passes);
	}
}
