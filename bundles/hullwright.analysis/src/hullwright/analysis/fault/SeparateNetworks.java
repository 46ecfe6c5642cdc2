/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.fault;

import hullwright.analysis.wiring.AttachedDevice;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.Network;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Which networks a short circuit on another cannot drive a current through. Without its loads, a network that meets the rest of the
 * boat at one place alone, where its one supply enters, is a dead end: nothing flows in it. With a second supply, a device that is
 * on two networks, or a device with a supply of its own, current may pass through.
 */
final class SeparateNetworks {

	/**
	 * A boat with what a short circuit on some of its networks concerns, and no more.
	 *
	 * @param boat the boat without the networks that are dead ends for these
	 * @param networks the numbers, within the whole boat, of the networks at which to make short circuits
	 * @param numbers by number of the network in this boat, its number in the whole boat
	 */
	record Part(Boat boat, BitSet networks, int[] numbers) {
	}

	private SeparateNetworks() {
	}

	/** The parts of a boat, which together hold each network once; the boat itself if nothing is gained by taking it apart. */
	static List<Part> of(Boat boat, Wiring wiring) {
		int networks = boat.networks().size();
		BitSet passing = passing(networks, wiring);
		if (networks - passing.cardinality() < 2) {
			BitSet all = new BitSet();
			all.set(0, networks);
			return List.of(new Part(boat, all, IntStream.range(0, networks).toArray()));
		}
		List<Part> parts = new ArrayList<>();
		if (!passing.isEmpty()) {
			parts.add(part(boat, passing, passing));
		}
		for (int i = passing.nextClearBit(0); i < networks; i = passing.nextClearBit(i + 1)) {
			BitSet one = new BitSet();
			one.set(i);
			BitSet with = (BitSet) passing.clone();
			with.set(i);
			parts.add(part(boat, one, with));
		}
		return parts;
	}

	private static BitSet passing(int networks, Wiring wiring) {
		int[] places = new int[networks];
		wiring.entries().forEach(entry -> places[entry.network()]++);
		Map<String, Integer> networkOf = new HashMap<>();
		for (AttachedDevice each : wiring.devices()) {
			Integer other = networkOf.putIfAbsent(each.device().name(), each.network());
			if (other != null && other != each.network()) {
				places[other] += 2;
				places[each.network()] += 2;
			}
			places[each.network()] += each.device().settings().feeds().size();
		}
		BitSet passing = new BitSet();
		IntStream.range(0, networks).filter(i -> places[i] > 1).forEach(passing::set);
		return passing;
	}

	private static Part part(Boat boat, BitSet at, BitSet with) {
		int[] numbers = with.stream().toArray();
		List<Network> kept = IntStream.of(numbers).mapToObj(boat.networks()::get).toList();
		return new Part(new Boat(boat.series(), boat.revision(), boat.selection(), kept, boat.devices(), boat.serialLines(), boat.wirelessHops(),
				boat.power(), boat.layout(), boat.waivers(), boat.partsOnOffer(), boat.origin()), at, numbers);
	}
}
