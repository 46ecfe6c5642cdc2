/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.network.Drop;
import hullwright.network.Network;

/**
 * Where the drops of a network start: at the backbone, or at a part of another drop. Drops that start at each other are a mistake
 * that can be said; they end the search.
 */
public final class Branches {

	private final Map<String, Drop> dropOfLeg = new HashMap<>();

	private Branches(Network network) {
		network.drops().forEach(drop -> drop.legs().forEach(leg -> dropOfLeg.put(leg.name(), drop)));
	}

	/** The branches of a network. */
	public static Branches of(Network network) {
		return new Branches(network);
	}

	/** The drop from which another branches off; none if that starts at a backbone. */
	public Optional<Drop> parent(Drop drop) {
		return Optional.ofNullable(dropOfLeg.get(drop.from().part()));
	}

	/** The drop at the backbone that another belongs to; itself if it starts there. */
	public Drop root(Drop drop) {
		Drop at = drop;
		Set<String> seen = new HashSet<>();
		while (dropOfLeg.containsKey(at.from().part()) && seen.add(at.name())) {
			at = dropOfLeg.get(at.from().part());
		}
		return at;
	}

	/** The qualified name of the part of a backbone that a part hangs on; of itself if no drop has it. */
	public String backbonePart(String part) {
		return dropOfLeg.containsKey(part) ? root(dropOfLeg.get(part)).from().part() : part;
	}
}
