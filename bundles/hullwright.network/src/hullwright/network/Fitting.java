/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;
import java.util.Optional;

import hullwright.network.part.Connector;
import hullwright.network.part.Cord;
import hullwright.network.part.Part;

/**
 * A part that is no cable, in a backbone or a drop.
 *
 * @param name the qualified name
 * @param part what it is
 * @param turned whether it lies the other way round than its catalog writes it
 * @param details where it is and what is joined to it
 * @param origin its place in the text
 */
public record Fitting(String name, Part part, boolean turned, Details details, Origin origin) implements Element {

	/**
	 * Where a part is and what is joined to it.
	 *
	 * @param place where it is, if the text says
	 * @param bulkhead the wall that it leads through, if the text says
	 * @param label what is written on it, empty if nothing
	 * @param feeds the qualified names of the supplies that feed the network through it
	 * @param earthsShield whether the shield is earthed here
	 * @param device the device behind an in-line terminator, or the device that the backbone runs through
	 */
	public record Details(Optional<String> place, Optional<String> bulkhead, String label, List<String> feeds, boolean earthsShield,
			Optional<FittedDevice> device) {

		/** The text says nothing. */
		public static final Details UNSTATED = new Details(Optional.empty(), Optional.empty(), "", List.of(), false, Optional.empty());

		/** Where it is, and nothing else. */
		public static Details at(Optional<String> place, Optional<String> bulkhead) {
			return new Details(place, bulkhead, "", List.of(), false, Optional.empty());
		}
	}

	/** The same part with another device behind or in it. */
	public Fitting with(Optional<FittedDevice> device) {
		return new Fitting(name, part, turned, new Details(details.place, details.bulkhead, details.label, details.feeds,
				details.earthsShield, device), origin);
	}

	@Override
	public Optional<Connector> towardsStart() {
		return isBareAt(turned) ? Optional.empty() : part.ends().towardsStart(turned);
	}

	@Override
	public Optional<Connector> towardsEnd() {
		return isBareAt(!turned) ? Optional.empty() : part.ends().towardsEnd(turned);
	}

	/** A cord has its plug at one end only; what else has one connector shows it to both sides. */
	private boolean isBareAt(boolean secondEnd) {
		return secondEnd && part instanceof Cord;
	}

	@Override
	public Fitting turned(boolean otherWay) {
		return new Fitting(name, part, otherWay, details, origin);
	}
}
