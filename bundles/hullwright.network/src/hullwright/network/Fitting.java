/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import hullwright.network.part.Connector;
import hullwright.network.part.Part;
import java.util.List;
import java.util.Optional;

/**
 * A part that is fitted in the run of a backbone or of a drop.
 *
 * @param name the qualified name
 * @param part what it is
 * @param turned whether it lies the other way round than the catalog writes its ends
 * @param place where it is, if the text says
 * @param label what is written on it, empty if nothing
 * @param feeds the names of the supplies that feed the network through it
 * @param earthsShield whether the shield is earthed here
 * @param behind the device behind an in-line terminator
 * @param origin its place in the text
 */
public record Fitting(String name, Part part, boolean turned, Optional<String> place, String label, List<String> feeds,
		boolean earthsShield, Optional<FittedDevice> behind, Origin origin) implements Element {

	public Fitting {
		feeds = List.copyOf(feeds);
	}

	@Override
	public Optional<Connector> towardsStart() {
		return part.ends().towardsStart(turned);
	}

	@Override
	public Optional<Connector> towardsEnd() {
		return part.ends().towardsEnd(turned);
	}

	@Override
	public Fitting turned(boolean otherWay) {
		return new Fitting(name, part, otherWay, place, label, feeds, earthsShield, behind, origin);
	}
}
