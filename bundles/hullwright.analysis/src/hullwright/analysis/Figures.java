/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis;

import hullwright.analysis.data.DataFlow;
import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.line.BackboneLength;
import hullwright.analysis.line.DropLength;
import hullwright.analysis.line.LineFigures;
import hullwright.analysis.line.Stub;
import hullwright.analysis.line.Termination;
import hullwright.analysis.line.TerminatorPlace;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialRelay;
import hullwright.analysis.serial.SerialRelays;
import hullwright.analysis.serial.Waiting;
import hullwright.analysis.traffic.BusFigures;
import hullwright.analysis.traffic.DevicesOnNetwork;
import hullwright.analysis.wiring.CutOff;
import hullwright.analysis.wiring.Joint;
import hullwright.analysis.wiring.Joints;
import hullwright.analysis.wiring.SparePort;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Backbone;
import hullwright.network.Boat;
import hullwright.network.Drop;
import hullwright.network.Network;
import hullwright.network.WirelessHop;
import hullwright.network.power.PowerState;
import hullwright.quantity.Duration;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The figures of one boat, each computed when it is first asked for and then kept, so that rules may ask freely. For use by
 * one thread.
 */
public final class Figures {

	private final Boat boat;
	private final Map<Drop, DropLength> drops = new IdentityHashMap<>();
	private final Map<Backbone, BackboneLength> backbones = new IdentityHashMap<>();
	private final Map<Backbone, Termination> terminations = new IdentityHashMap<>();
	private final Map<Backbone, List<TerminatorPlace>> terminators = new IdentityHashMap<>();
	private final Map<Network, List<Stub>> stubs = new IdentityHashMap<>();
	private final Map<Network, List<Joint>> joints = new IdentityHashMap<>();
	private final Map<Network, List<SparePort>> sparePorts = new IdentityHashMap<>();
	private final Optional<PowerState> only;
	private final Map<Class<?>, Object> derived = new HashMap<>();
	private BoatElectrics electrics;
	private List<LineFigures> lines;
	private DataFlow data;
	private List<BusFigures> buses;
	private List<SerialLineFigures> serialLines;
	private List<SerialRelay> serialRelays;

	/** The figures of a boat; nothing is computed yet. */
	public Figures(Boat boat) {
		this(boat, Optional.empty());
	}

	/**
	 * The figures of a boat; nothing is computed yet.
	 *
	 * @param only the power state of the electrics, for those who want to see no other
	 */
	public Figures(Boat boat, Optional<PowerState> only) {
		this.boat = boat;
		this.only = only;
	}

	/** The boat that the figures are of. */
	public Boat boat() {
		return boat;
	}

	/** How long a drop is. */
	public DropLength lengthOf(Drop drop) {
		return drops.computeIfAbsent(drop, DropLength::of);
	}

	/** How long a backbone of this network is, by both counts of its ends. */
	public BackboneLength lengthOf(Network network, Backbone backbone) {
		return backbones.computeIfAbsent(backbone, each -> BackboneLength.of(each, network.drops(), this::lengthOf));
	}

	/** How the ends of a backbone of this network are terminated. */
	public Termination terminationOf(Network network, Backbone backbone) {
		return terminations.computeIfAbsent(backbone, each -> Termination.of(each, network.drops(), network.feeds()));
	}

	/** Every terminating resistor on a backbone of this network and on what hangs on it. */
	public List<TerminatorPlace> terminatorsOf(Network network, Backbone backbone) {
		return terminators.computeIfAbsent(backbone, each -> TerminatorPlace.of(network, each));
	}

	/** The branches of a network. */
	public List<Stub> stubsOf(Network network) {
		return stubs.computeIfAbsent(network, each -> Stub.of(each, this::lengthOf));
	}

	/** How many devices are plugged into a network. One with several addresses, or with two ports there, counts once. */
	public int nodesOf(Network network) {
		return DevicesOnNetwork.of(network).all().size();
	}

	/** Where connectors meet in a network. */
	public List<Joint> jointsOf(Network network) {
		return joints.computeIfAbsent(network, Joints::of);
	}

	/** The ports of a network that nothing is plugged into. */
	public List<SparePort> sparePortsOf(Network network) {
		return sparePorts.computeIfAbsent(network, SparePort::of);
	}

	/** What is cut off from all supplies by a part that does not pass the supply on. */
	public List<CutOff> cutOff() {
		return derived(CutOffParts.class, figures -> new CutOffParts(CutOff.of(figures.electrics().wiring()))).parts();
	}

	private record CutOffParts(List<CutOff> parts) {
	}

	/**
	 * Figures that a rule, or several rules of one house, work out for themselves, kept with the others of the boat.
	 *
	 * @param kind their type, which no two kinds of figures share
	 * @param compute works them out from the others; asked once for each boat
	 */
	public <T> T derived(Class<T> kind, Function<Figures, T> compute) {
		if (!derived.containsKey(kind)) {
			derived.put(kind, compute.apply(this));
		}
		return kind.cast(derived.get(kind));
	}

	/** The signal lines, one for each network. They need no electrics. */
	public List<LineFigures> lines() {
		if (lines == null) {
			lines = electrics == null ? LineFigures.of(boat, Wiring.of(boat)) : electrics.lines();
		}
		return lines;
	}

	/** Voltages, currents, faults and losses. */
	public BoatElectrics electrics() {
		if (electrics == null) {
			electrics = only.map(state -> BoatElectrics.of(boat, state)).orElseGet(() -> BoatElectrics.of(boat));
		}
		return electrics;
	}

	/** Who tells what to whom. */
	public DataFlow data() {
		if (data == null) {
			data = DataFlow.of(boat);
		}
		return data;
	}

	/** The serial lines with all that goes over them, in the order of the text. */
	public List<SerialLineFigures> serialLines() {
		if (serialLines == null) {
			serialLines = SerialLineFigures.of(boat, data()::sentencesOn);
		}
		return serialLines;
	}

	/** The traffic, one entry for each network. */
	public List<BusFigures> buses() {
		if (buses == null) {
			buses = BusFigures.of(boat, data().passedOn(), this::timeOver);
		}
		return buses;
	}

	/**
	 * How long what goes over a serial line or a wireless hop may take; nothing if there is no bound. What nothing is known of, such
	 * as a line without a rate or a hop without a delay, takes no time here; the lines and the paths of the data tell of it.
	 */
	private Optional<Duration> timeOver(String carrier) {
		for (SerialLineFigures each : serialLines()) {
			if (each.line().name().equals(carrier)) {
				return each.waiting() instanceof Waiting.Bounded bounded ? Optional.of(bounded.longest())
						: ((Waiting.Unbounded) each.waiting()).isForWantOfFacts() ? Optional.of(new Duration(0)) : Optional.empty();
			}
		}
		return boat.wirelessHops().stream().filter(each -> each.name().equals(carrier)).findFirst().flatMap(WirelessHop::delay)
				.or(() -> Optional.of(new Duration(0)));
	}

	/** The devices that pass sentences on from serial lines to another. */
	public List<SerialRelay> serialRelays() {
		if (serialRelays == null) {
			serialRelays = SerialRelays.of(boat, serialLines());
		}
		return serialRelays;
	}
}
