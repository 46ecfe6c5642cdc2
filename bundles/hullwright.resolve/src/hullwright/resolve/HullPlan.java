/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;

import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.part.Cable;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Part;
import hullwright.quantity.Length;

/**
 * A boat that is sold: its options and what differs from the series, by the qualified name of what it concerns.
 *
 * @param name the name or number of the hull
 * @param options what its buyer ordered
 * @param removed what is left out
 * @param parts what is another part
 * @param lengths what cable has another length
 * @param ways what drop goes another way
 * @param before what is added to a walk before an item
 * @param after what is added to a walk after an item
 * @param hanging what is added to a network
 * @param items what is added beside the networks
 */
record HullPlan(String name, SortedSet<String> options, Set<String> removed, Map<String, Part> parts, Map<String, Length> lengths,
		Map<String, List<Element>> ways, Map<String, List<WhenFitted<Element>>> before, Map<String, List<WhenFitted<Element>>> after,
		Map<String, HangingPlan> hanging, ItemsPlan items) {

	/** A boat of the series without differences of its own. */
	static final HullPlan NONE = new HullPlan("", Collections.emptySortedSet(), Set.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(),
			new ItemsPlan(List.of(), List.of(), List.of()));

	HullPlan {
		removed = Set.copyOf(removed);
		parts = Map.copyOf(parts);
		lengths = Map.copyOf(lengths);
		ways = Map.copyOf(ways);
		before = Map.copyOf(before);
		after = Map.copyOf(after);
		hanging = Map.copyOf(hanging);
	}

	boolean removes(String element) {
		return removed.contains(element);
	}

	/** What becomes of the elements of a way. */
	List<Element> changed(List<Element> elements) {
		return elements.stream().flatMap(element -> changed(element).stream()).toList();
	}

	/** What becomes of an element; empty if the hull lacks it. */
	Optional<Element> changed(Element element) {
		if (removes(element.name())) {
			return Optional.empty();
		}
		Part part = parts.get(element.name());
		Length length = lengths.get(element.name());
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
		return parts.get(device.usual().name()) instanceof DeviceModel other ? device.as(other) : device.usual();
	}

	/** The way to a device on this hull, if it differs. */
	Optional<List<Element>> otherWay(String drop) {
		return Optional.ofNullable(ways.get(drop));
	}

	/** A walk with what this hull adds to it, which may stand beside something else that it adds. */
	List<WhenFitted<Element>> walk(List<WhenFitted<Element>> elements) {
		if (before.isEmpty() && after.isEmpty()) {
			return elements;
		}
		List<WhenFitted<Element>> walk = new ArrayList<>();
		Set<String> walked = new HashSet<>();
		elements.forEach(element -> walk(element, walk, walked));
		return walk;
	}

	private void walk(WhenFitted<Element> element, List<WhenFitted<Element>> walk, Set<String> walked) {
		String item = element.item().name();
		// something that is added beside itself stands there once
		if (walked.add(item)) {
			before.getOrDefault(item, List.of()).forEach(added -> walk(added, walk, walked));
			walk.add(element);
			after.getOrDefault(item, List.of()).forEach(added -> walk(added, walk, walked));
		}
	}

	/** What this hull has hanging on a network that others lack. */
	Optional<HangingPlan> addedTo(String network) {
		return Optional.ofNullable(hanging.get(network));
	}
}
