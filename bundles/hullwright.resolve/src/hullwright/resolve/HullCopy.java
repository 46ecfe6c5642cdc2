/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
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

import hullwright.network.Element;
import hullwright.network.part.Cable;
import hullwright.network.part.Part;
import hullwright.quantity.Length;
import hullwright.spec.AddElement;
import hullwright.spec.AddItem;
import hullwright.spec.AddToWalk;
import hullwright.spec.ChangeItem;
import hullwright.spec.Hull;
import hullwright.spec.HullChange;
import hullwright.spec.Named;
import hullwright.spec.NetworkElement;
import hullwright.spec.RemoveItem;
import hullwright.spec.SeriesItem;

/**
 * Copies what a hull changes out of the spec.
 */
final class HullCopy {

	private final Map<String, Optional<Cable>> usualCables;
	private final Copying copying;
	private final Set<String> removed = new HashSet<>();
	private final Map<String, Part> parts = new HashMap<>();
	private final Map<String, Length> lengths = new HashMap<>();
	private final Map<String, List<Element>> ways = new HashMap<>();
	private final Map<String, List<WhenFitted<Element>>> before = new HashMap<>();
	private final Map<String, List<WhenFitted<Element>>> after = new HashMap<>();
	private final Map<String, List<NetworkElement>> hanging = new HashMap<>();
	private final List<SeriesItem> items = new ArrayList<>();

	/**
	 * Ready to copy one hull.
	 *
	 * @param usualCables by network, the cable that lengths are made of unless they say otherwise
	 */
	HullCopy(Map<String, Optional<Cable>> usualCables, Copying copying) {
		this.usualCables = usualCables;
		this.copying = copying;
	}

	/** The plan of a hull. */
	HullPlan of(Hull hull) {
		hull.getChanges().forEach(this::add);
		SortedSet<String> options = hull.getOptions().stream().map(Named::getName).collect(Collectors.toCollection(TreeSet::new));
		Map<String, HangingPlan> hangingPlans = new HashMap<>();
		hanging.forEach((network, elements) -> hangingPlans.put(network, new HangingCopy(network, usualCable(network), copying).of(elements)));
		return new HullPlan(hull.getName(), options, removed, parts, lengths, ways, before, after, hangingPlans, new ItemsCopy(copying).of(items));
	}

	private void add(HullChange change) {
		// a change outside the networks is of something that the series itself declares
		String owner = change.getNetwork() == null ? copying.names().ofSeries() : copying.names().of(change.getNetwork());
		if (change instanceof ChangeItem item) {
			change(item, owner, owner + "." + item.getTarget().getName());
		} else if (change instanceof RemoveItem item) {
			removed.add(owner + "." + item.getTarget().getName());
		} else if (change instanceof AddToWalk walk) {
			(walk.isBefore() ? before : after).merge(owner + "." + walk.getAnchor().getName(),
					new BackboneCopy(copying, owner, usualCable(owner)).elements(walk),
					(earlier, later) -> Stream.concat(earlier.stream(), later.stream()).toList());
		} else if (change instanceof AddElement element) {
			hanging.computeIfAbsent(owner, none -> new ArrayList<>()).add(element.getElement());
		} else if (change instanceof AddItem item) {
			items.add(item.getItem());
		}
	}

	private void change(ChangeItem item, String owner, String target) {
		copying.parts().of(item.getType() != null ? item.getType() : item.getCable()).ifPresent(part -> parts.put(target, part));
		if (item.getLength() != null) {
			lengths.put(target, item.getLength());
		}
		if (!item.getLegs().isEmpty()) {
			ways.put(target, RunPlan.legs(item.getLegs(), target, owner, usualCable(owner), copying));
		}
	}

	private Optional<Cable> usualCable(String network) {
		return usualCables.getOrDefault(network, Optional.empty());
	}
}
