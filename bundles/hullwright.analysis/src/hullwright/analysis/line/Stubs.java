/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.part.Adapter;
import hullwright.quantity.Length;

/**
 * The branches of a network. A drop that starts at a part of another drop belongs to the branch of that one.
 */
final class Stubs {

	private final Function<Drop, DropLength> lengthOf;
	private final Map<String, Drop> homeOfLeg = new HashMap<>();

	private Stubs(Network network, Function<Drop, DropLength> lengthOf) {
		this.lengthOf = lengthOf;
		network.drops().forEach(drop -> drop.legs().forEach(leg -> homeOfLeg.put(leg.name(), drop)));
	}

	static List<Stub> of(Network network, Function<Drop, DropLength> lengthOf) {
		Stubs stubs = new Stubs(network, lengthOf);
		Map<Drop, Stub> byRoot = new LinkedHashMap<>();
		for (Drop drop : network.drops()) {
			Drop root = stubs.root(drop);
			Length reach = stubs.toStart(drop, new HashSet<>()).plus(lengthOf.apply(drop).total());
			Stub known = byRoot.get(root);
			Length total = lengthOf.apply(drop).total().plus(known == null ? Length.ZERO : known.total());
			byRoot.put(root, known == null || reach.compareTo(known.length()) > 0
					? new Stub(root.name(), root.from().part(), drop.name(), reach, total)
					: new Stub(known.drop(), known.from(), known.farthest(), known.length(), total));
		}
		return List.copyOf(byRoot.values());
	}

	private Drop root(Drop drop) {
		Drop at = drop;
		Set<String> seen = new HashSet<>();
		while (homeOfLeg.containsKey(at.from().part()) && seen.add(at.name())) {
			at = homeOfLeg.get(at.from().part());
		}
		return at;
	}

	/** How far from the backbone a drop starts. */
	private Length toStart(Drop drop, Set<String> seen) {
		Drop parent = homeOfLeg.get(drop.from().part());
		if (parent == null || !seen.add(drop.name())) {
			return Length.ZERO;
		}
		Length reached = toStart(parent, seen);
		for (Element leg : parent.legs()) {
			if (leg instanceof CableRun run) {
				reached = reached.plus(run.length());
			} else if (((Fitting) leg).part() instanceof Adapter adapter) {
				reached = reached.plus(adapter.length().orElse(Length.ZERO));
			}
			if (leg.name().equals(drop.from().part())) {
				break;
			}
		}
		return reached;
	}
}
