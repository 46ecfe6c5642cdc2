/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.Boat;

/**
 * Everything on the networks of a boat, joined as it will be built.
 *
 * @param points how many points there are, numbered from 0
 * @param spans what joins them
 * @param devices the devices on them
 * @param entries where supplies enter
 * @param terminators the resistors across the signal pair
 * @param ends by network, the points at which its backbones begin and end, in the order of the text
 * @param towardsStart by qualified name of a part or cable, its point towards the start of its backbone or drop
 * @param towardsEnd the same for the other side; for a part without two sides the same point
 */
public record Wiring(int points, List<Span> spans, List<AttachedDevice> devices, List<SupplyEntry> entries,
		List<TerminatingResistor> terminators, List<List<BackboneEnds>> ends, Map<String, Integer> towardsStart,
		Map<String, Integer> towardsEnd) {

	/**
	 * The two ends of a backbone.
	 *
	 * @param start the point at its start
	 * @param end the point at its end
	 */
	public record BackboneEnds(int start, int end) {
	}

	public Wiring {
		spans = List.copyOf(spans);
		devices = List.copyOf(devices);
		entries = List.copyOf(entries);
		terminators = List.copyOf(terminators);
		ends = ends.stream().map(List::copyOf).toList();
		towardsStart = Map.copyOf(towardsStart);
		towardsEnd = Map.copyOf(towardsEnd);
	}

	/** The wiring of a boat. */
	public static Wiring of(Boat boat) {
		return new WiringWalk().walk(boat);
	}

	/** The point of a part towards the start, if there is such a part. */
	public Optional<Integer> pointOf(String part) {
		return Optional.ofNullable(towardsStart.get(part));
	}
}
