/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Origin;
import hullwright.network.part.Cable;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Part;
import hullwright.quantity.Length;
import hullwright.spec.AddElement;
import hullwright.spec.AddItem;
import hullwright.spec.AddToWalk;
import hullwright.spec.ChangeItem;
import hullwright.spec.Hull;
import hullwright.spec.HullChange;
import hullwright.spec.Named;
import hullwright.spec.RemoveItem;

/**
 * A boat that is sold: its options and what differs from the series.
 *
 * @param name the name or number of the hull
 * @param options what its buyer ordered
 * @param changes what differs
 * @param origin its place in the text
 */
record HullPlan(String name, SortedSet<String> options, Changes changes, Origin origin) {

	/** A boat of the series without differences of its own. */
	static final HullPlan NONE = new HullPlan("", new TreeSet<>(), Changes.none(), Origin.nowhere(""));

	/**
	 * What differs, by the qualified name of what it concerns.
	 *
	 * @param removed what is left out
	 * @param parts what is another part
	 * @param lengths what cable has another length
	 * @param ways what drop goes another way
	 * @param before what is added to a walk before an item
	 * @param after what is added to a walk after an item
	 * @param hanging what is added to a network
	 * @param items what is added beside the networks
	 */
	record Changes(Set<String> removed, Map<String, Part> parts, Map<String, Length> lengths, Map<String, List<Element>> ways,
			Map<String, List<WhenFitted<Element>>> before, Map<String, List<WhenFitted<Element>>> after, Map<String, HangingPlan> hanging,
			ItemsPlan items) {

		static Changes none() {
			return new Changes(new HashSet<>(), new HashMap<>(), new HashMap<>(), new HashMap<>(), new HashMap<>(), new HashMap<>(),
					new HashMap<>(), new ItemsPlan());
		}
	}

	boolean removes(String element) {
		return changes.removed.contains(element);
	}

	/** What becomes of an element; empty if the hull lacks it. */
	Optional<Element> changed(Element element) {
		if (removes(element.name())) {
			return Optional.empty();
		}
		Part part = changes.parts.get(element.name());
		Length length = changes.lengths.get(element.name());
		if (element instanceof CableRun run && (part instanceof Cable || length != null)) {
			Optional<Cable> cable = part instanceof Cable other ? Optional.of(other) : run.cable();
			return Optional.of(new CableRun(run.name(), cable, length == null ? run.length() : length, run.way(), run.turned(), run.origin()));
		} else if (element instanceof Fitting fitting && part != null) {
			return Optional.of(new Fitting(fitting.name(), part, fitting.turned(), fitting.details(), fitting.origin()));
		}
		return Optional.of(element);
	}

	/** What a device is on this hull. */
	FittedDevice changed(DevicePlan device) {
		return changes.parts.get(device.usual().name()) instanceof DeviceModel other ? device.as(other) : device.usual();
	}

	/** The way to a device on this hull, if it differs. */
	Optional<List<Element>> otherWay(String drop) {
		return Optional.ofNullable(changes.ways.get(drop));
	}

	/** What this hull has in its walk beside an item. */
	List<WhenFitted<Element>> walk(String item, boolean before) {
		return (before ? changes.before : changes.after).getOrDefault(item, List.of());
	}

	/** What this hull has hanging on a network that others lack. */
	Optional<HangingPlan> hanging(String network) {
		return Optional.ofNullable(changes.hanging.get(network));
	}

	static HullPlan of(Hull hull, Map<String, Optional<Cable>> usualCables, Copying copying) {
		SortedSet<String> options = hull.getOptions().stream().map(Named::getName).collect(Collectors.toCollection(TreeSet::new));
		Changes changes = Changes.none();
		hull.getChanges().forEach(change -> add(change, changes, usualCables, copying));
		String name = copying.names().ofOwn("hull-" + hull.getName());
		return new HullPlan(hull.getName(), options, changes, copying.places().of(hull, name));
	}

	private static void add(HullChange change, Changes changes, Map<String, Optional<Cable>> usualCables, Copying copying) {
		String owner = change.getNetwork() == null ? copying.names().ofOwn("") : copying.names().of(change.getNetwork()) + ".";
		String network = owner.substring(0, owner.length() - 1);
		Optional<Cable> usual = usualCables.getOrDefault(network, Optional.empty());
		if (change instanceof ChangeItem item) {
			String target = owner + item.getTarget().getName();
			copying.parts().of(item.getType() != null ? item.getType() : item.getCable()).ifPresent(part -> changes.parts.put(target, part));
			if (item.getLength() != null) {
				changes.lengths.put(target, item.getLength());
			}
			if (!item.getLegs().isEmpty()) {
				changes.ways.put(target, RunPlan.legs(item.getLegs(), target, network, usual, copying));
			}
		} else if (change instanceof RemoveItem item) {
			changes.removed.add(owner + item.getTarget().getName());
		} else if (change instanceof AddToWalk walk) {
			Map<String, List<WhenFitted<Element>>> side = walk.isBefore() ? changes.before : changes.after;
			side.merge(owner + walk.getAnchor().getName(), new BackboneCopy(copying, network, usual).elements(walk.getElements()),
					(earlier, later) -> Stream.concat(earlier.stream(), later.stream()).toList());
		} else if (change instanceof AddElement element) {
			changes.hanging.computeIfAbsent(network, none -> new HangingPlan(network, usual, copying))
					.add(List.of(element.getElement()), WhenFitted.Blocks.NONE);
		} else if (change instanceof AddItem item) {
			changes.items.add(List.of(item.getItem()), WhenFitted.Blocks.NONE, copying);
		}
	}
}
