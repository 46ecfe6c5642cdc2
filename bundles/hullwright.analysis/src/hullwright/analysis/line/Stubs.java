/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import hullwright.analysis.wiring.Branches;
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
	private final Branches branches;

	private Stubs(Network network, Function<Drop, DropLength> lengthOf) {
		this.lengthOf = lengthOf;
		branches = Branches.of(network);
	}

	static List<Stub> of(Network network, Function<Drop, DropLength> lengthOf) {
		Stubs stubs = new Stubs(network, lengthOf);
		Map<Drop, Stub> byRoot = new LinkedHashMap<>();
		for (Drop drop : network.drops()) {
			Drop root = stubs.branches.root(drop);
			Length reach = stubs.toStart(drop, new HashSet<>()).plus(lengthOf.apply(drop).total());
			Stub known = byRoot.get(root);
			Length total = lengthOf.apply(drop).total().plus(known == null ? Length.ZERO : known.total());
			byRoot.put(root, known == null || reach.compareTo(known.length()) > 0
					? new Stub(root.name(), root.from().part(), drop.name(), reach, total)
					: new Stub(known.drop(), known.from(), known.farthest(), known.length(), total));
		}
		return List.copyOf(byRoot.values());
	}

	/** How far from the backbone a drop starts. */
	private Length toStart(Drop drop, Set<String> seen) {
		Optional<Drop> parent = branches.parent(drop);
		if (parent.isEmpty() || !seen.add(drop.name())) {
			return Length.ZERO;
		}
		Length reached = toStart(parent.get(), seen);
		for (Element leg : parent.get().legs()) {
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
