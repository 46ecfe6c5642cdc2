/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.FaultCircuit;
import hullwright.analysis.power.FaultCurrents;
import hullwright.analysis.power.PowerCircuit;
import hullwright.analysis.wiring.AttachedDevice;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.part.FuseKind;
import hullwright.quantity.Current;
import hullwright.quantity.Duration;

/**
 * A short circuit at every device and at every end of a backbone, one at a time.
 */
public final class ShortCircuits {

	/** What of the fault current may pass by a fuse that carries all of it. */
	private static final double ASIDE = 1e-6;

	private final Boat boat;
	private final Wiring wiring;
	private final PowerCircuit power;
	private final Conditions conditions;
	private final FaultCircuit whole;

	private ShortCircuits(Boat boat, Wiring wiring, PowerCircuit power, Conditions conditions) {
		this.boat = boat;
		this.wiring = wiring;
		this.power = power;
		this.conditions = conditions;
		whole = power.faults(conditions, Set.of());
	}

	/**
	 * The short circuits of a boat.
	 *
	 * @param conditions the lowest bank and the hottest wire give the least current, at which fuses open latest
	 */
	public static List<ShortCircuit> of(Boat boat, Wiring wiring, PowerCircuit power, Conditions conditions) {
		List<SeparateNetworks.Part> parts = SeparateNetworks.of(boat, wiring);
		if (parts.size() == 1) {
			return List.copyOf(new ShortCircuits(boat, wiring, power, conditions).all(places(boat, wiring)).values());
		}
		Map<Place, ShortCircuit> found = new HashMap<>();
		for (SeparateNetworks.Part part : parts) {
			Wiring own = Wiring.of(part.boat());
			Map<Integer, Place> places = new LinkedHashMap<>();
			places(part.boat(), own).forEach((point, place) -> {
				int number = part.numbers()[place.network];
				if (part.networks().get(number)) {
					places.put(point, place);
				}
			});
			new ShortCircuits(part.boat(), own, PowerCircuit.of(part.boat(), own, conditions.state()), conditions).all(places)
					.forEach((point, shortCircuit) -> found.put(new Place(part.numbers()[places.get(point).network], places.get(point).name), shortCircuit));
		}
		return places(boat, wiring).values().stream().map(found::get).toList();
	}

	/**
	 * Where a short circuit is made.
	 *
	 * @param network the number of the network within the boat
	 * @param name the qualified name of the device or the part
	 */
	private record Place(int network, String name) {
	}

	/** By point of the wiring. */
	private static Map<Integer, Place> places(Boat boat, Wiring wiring) {
		Map<Integer, Place> byPoint = new LinkedHashMap<>();
		for (AttachedDevice each : wiring.devices()) {
			byPoint.putIfAbsent(each.point(), new Place(each.network(), each.device().name()));
		}
		for (int network = 0; network < boat.networks().size(); network++) {
			for (int i = 0; i < boat.networks().get(network).backbones().size() && i < wiring.ends().get(network).size(); i++) {
				var elements = boat.networks().get(network).backbones().get(i).elements();
				Wiring.BackboneEnds ends = wiring.ends().get(network).get(i);
				byPoint.putIfAbsent(ends.start(), new Place(network, elements.get(0).name()));
				byPoint.putIfAbsent(ends.end(), new Place(network, elements.get(elements.size() - 1).name()));
			}
		}
		return byPoint;
	}

	private Map<Integer, ShortCircuit> all(Map<Integer, Place> places) {
		Map<Integer, ShortCircuit> byPoint = new LinkedHashMap<>();
		places.forEach((point, place) -> byPoint.put(point, at(point, place.network, place.name)));
		return byPoint;
	}

	private ShortCircuit at(int point, int network, String name) {
		FaultCurrents first = whole.at(point);
		String networkName = boat.networks().get(network).name();
		if (first.current().isEmpty()) {
			return new ShortCircuit(networkName, name, new Current(0), Optional.empty(), List.of(), Optional.empty(), Optional.empty(),
					Optional.empty(), ShortCircuit.Verdict.WITHOUT_LIMIT);
		}
		Current current = first.current().get();
		if (current.amperes() == 0) {
			return new ShortCircuit(networkName, name, current, Optional.empty(), List.of(), Optional.empty(), Optional.empty(), Optional.empty(),
					ShortCircuit.Verdict.NO_CURRENT);
		}
		List<FuseOpening> openings = new ArrayList<>();
		List<FaultCurrents> phases = new ArrayList<>(List.of(first));
		boolean ended = open(point, phases, openings);
		Optional<Duration> after = ended
				? Optional.of(openings.stream().map(FuseOpening::within).reduce(new Duration(0), Duration::plus)) : Optional.empty();
		Optional<WeakestConductor> weakest = WeakestConductor.of(wiring, phases, openings.stream().map(FuseOpening::within).toList());
		ShortCircuit.Verdict verdict;
		if (after.isPresent()) {
			verdict = weakest.isPresent() && after.get().exceeds(weakest.get().stands()) ? ShortCircuit.Verdict.ENDED_TOO_LATE
					: ShortCircuit.Verdict.ENDED_IN_TIME;
		} else {
			FaultCurrents last = phases.get(phases.size() - 1);
			verdict = weakest.isEmpty() && WeakestConductor.isBorne(wiring, last) ? ShortCircuit.Verdict.HARMLESS
					: dependsOnUnknownFuse(last) ? ShortCircuit.Verdict.FUSE_UNKNOWN : ShortCircuit.Verdict.NOT_ENDED;
		}
		return new ShortCircuit(networkName, name, current, first.limitedBy(), openings, after, weakest.map(WeakestConductor::name),
				weakest.map(WeakestConductor::stands), verdict);
	}

	private static boolean dependsOnUnknownFuse(FaultCurrents last) {
		return last.fuses().stream().anyMatch(each -> each.current().exceeds(each.fuse().rating())
				&& each.fuse().kind().map(FuseKind::openings).orElse(List.of()).isEmpty());
	}

	/** Opens the quickest fuse, adds what still flows, and so on; tells whether nothing flows in the end. */
	private boolean open(int point, List<FaultCurrents> phases, List<FuseOpening> openings) {
		Set<Integer> opened = new HashSet<>();
		FaultCurrents now = phases.get(0);
		while (true) {
			Optional<Map.Entry<FaultCurrents.ThroughFuse, Duration>> quickest = now.fuses().stream()
					.flatMap(each -> FuseCurve.opensWithin(each.fuse(), each.current()).map(within -> Map.entry(each, within)).stream())
					.min(Comparator.comparing(Map.Entry<FaultCurrents.ThroughFuse, Duration>::getValue).thenComparing(each -> each.getKey().number()));
			if (quickest.isEmpty()) {
				return false;
			}
			FaultCurrents.ThroughFuse fuse = quickest.get().getKey();
			openings.add(new FuseOpening(fuse.owner(), fuse.side(), fuse.fuse(), fuse.current(), quickest.get().getValue()));
			boolean whole = fuse.current().amperes() >= now.current().orElseThrow().amperes() * (1 - ASIDE);
			if (whole) {
				return true;
			}
			opened.add(fuse.number());
			now = power.faults(conditions, opened).at(point);
			if (now.current().isEmpty() || now.current().get().amperes() == 0) {
				return now.current().isPresent();
			}
			phases.add(now);
		}
	}
}
