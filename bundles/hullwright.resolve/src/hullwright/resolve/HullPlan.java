/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.Element;
import hullwright.network.Origin;
import hullwright.network.part.Cable;
import hullwright.network.part.DeviceModel;
import hullwright.spec.AddDrop;
import hullwright.spec.ChangeDevice;
import hullwright.spec.Hull;
import hullwright.spec.HullChange;
import hullwright.spec.Named;
import hullwright.spec.RemoveDevice;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A boat that is sold: its options and what differs from the series.
 *
 * @param name the name or number of the hull
 * @param options what its buyer ordered
 * @param changes what differs
 * @param origin its place in the text
 */
record HullPlan(String name, SortedSet<String> options, List<Change> changes, Origin origin) {

	/** One difference. */
	sealed interface Change {

		/** What becomes of a drop; empty if the hull lacks it. */
		default Optional<DropPlan> applyTo(DropPlan drop) {
			return Optional.of(drop);
		}

		/** The drop that it adds to a network, if it adds one to this network. */
		default Optional<DropPlan> added(String network) {
			return Optional.empty();
		}
	}

	private record Another(String device, Optional<DeviceModel> model, List<Element> legs) implements Change {
		@Override
		public Optional<DropPlan> applyTo(DropPlan drop) {
			return Optional.of(drop.name().equals(device) ? drop.changed(model, legs) : drop);
		}
	}

	private record Without(String device) implements Change {
		@Override
		public Optional<DropPlan> applyTo(DropPlan drop) {
			return drop.name().equals(device) ? Optional.empty() : Optional.of(drop);
		}
	}

	private record Additional(String network, DropPlan drop) implements Change {
		@Override
		public Optional<DropPlan> added(String where) {
			return network.equals(where) ? Optional.of(drop) : Optional.empty();
		}
	}

	static HullPlan of(Hull hull, String name, String series, CatalogParts parts, TextPlaces places, Map<String, Optional<Cable>> usualCables) {
		SortedSet<String> options = hull.getOptions().stream().map(Named::getName).collect(Collectors.toCollection(TreeSet::new));
		List<Change> changes = hull.getChanges().stream().map(change -> change(change, series, parts, places, usualCables)).toList();
		return new HullPlan(hull.getName(), options, changes, places.of(hull, name));
	}

	private static Change change(HullChange change, String series, CatalogParts parts, TextPlaces places, Map<String, Optional<Cable>> usualCables) {
		String network = series + "." + change.getNetwork().getName();
		Optional<Cable> usual = usualCables.getOrDefault(network, Optional.empty());
		if (change instanceof ChangeDevice another) {
			String device = network + "." + another.getDevice().getName();
			return new Another(device, parts.device(another.getType()), DropPlan.legs(another.getLegs(), device, parts, places, usual));
		} else if (change instanceof RemoveDevice without) {
			return new Without(network + "." + without.getDevice().getName());
		}
		return new Additional(network, DropPlan.of(((AddDrop) change).getDrop(), parts, places, network, usual));
	}
}
