/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.analysis.circuit.LoadLaw;
import hullwright.analysis.conductor.CopperConductor;
import hullwright.analysis.wiring.AttachedDevice;
import hullwright.analysis.wiring.Medium;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.SupplyEntry;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.DeviceSettings.OwnFeed;
import hullwright.network.FittedDevice;
import hullwright.network.part.Cable;
import hullwright.network.part.DevicePower;
import hullwright.network.part.Load;
import hullwright.network.power.Supply;
import hullwright.network.power.SupplyLead;
import hullwright.quantity.ConductorSize;
import hullwright.quantity.Current;
import hullwright.quantity.Length;

/**
 * Lays the networks of a boat into its circuit: both power conductors of every span, the leads of the supplies, the devices and
 * what feeds them otherwise.
 */
final class NetworkCircuit {

	private static final Cable.Conductor LIGHT = new Cable.Conductor((ConductorSize) Assumption.Kind.CONDUCTOR.assumed().orElseThrow(), Optional.empty());

	private final Boat boat;
	private final Wiring wiring;
	private final PlantCircuit plant;
	private final CircuitAssembly assembly;
	private final List<Entry> entries = new ArrayList<>();
	private final int[] supplyNode;
	private final int[] returnNode;
	private final int[] supplyOfSpan;
	private final int[] returnOfSpan;

	NetworkCircuit(Boat boat, Wiring wiring, PlantCircuit plant, CircuitAssembly assembly) {
		this.boat = boat;
		this.wiring = wiring;
		this.plant = plant;
		this.assembly = assembly;
		supplyNode = new int[wiring.points()];
		returnNode = new int[wiring.points()];
		supplyOfSpan = new int[wiring.spans().size()];
		returnOfSpan = new int[wiring.spans().size()];
	}

	void lay() {
		for (int point = 0; point < wiring.points(); point++) {
			supplyNode[point] = assembly.node();
			returnNode[point] = assembly.node();
		}
		for (int i = 0; i < wiring.spans().size(); i++) {
			Span span = wiring.spans().get(i);
			Resistor resistor = resistor(span);
			supplyOfSpan[i] = -1;
			returnOfSpan[i] = -1;
			if (span.passes().supply()) {
				supplyOfSpan[i] = span.medium() instanceof Medium.Inside inside && inside.fuse().isPresent()
						? assembly.fuse(supplyNode[span.from()], supplyNode[span.to()], span.element(), inside.side(), inside.fuse().get(),
								List.of(side(span.from()), side(span.to())))
						: assembly.resistor(supplyNode[span.from()], supplyNode[span.to()], resistor);
			}
			if (span.passes().back()) {
				returnOfSpan[i] = assembly.resistor(returnNode[span.from()], returnNode[span.to()], resistor);
			}
		}
		wiring.entries().forEach(this::enter);
		Map<String, List<AttachedDevice>> byDevice = new LinkedHashMap<>();
		wiring.devices().forEach(each -> byDevice.computeIfAbsent(each.device().name(), none -> new ArrayList<>()).add(each));
		byDevice.values().forEach(this::layDevice);
		Set<String> seen = new HashSet<>(byDevice.keySet());
		for (FittedDevice device : boat.devices()) {
			if (seen.add(device.name())) {
				feedItself(device, List.of());
			}
		}
	}

	private FuseInCircuit.Side side(int point) {
		return new FuseInCircuit.Side(supplyNode[point], returnNode[point]);
	}

	private Resistor resistor(Span span) {
		if (span.medium() instanceof Medium.Contact contact) {
			double ohms = contact.family().map(family -> {
				if (family.contact().isEmpty()) {
					assembly.assume(Assumption.Kind.CONTACT_RESISTANCE, family.name());
				}
				return family.contact().orElse(Medium.Contact.USUAL).ohms();
			}).orElse(0.0);
			return new Resistor(span.element(), ohms, false);
		} else if (span.medium() instanceof Medium.Conductors conductors) {
			if (conductors.power().isEmpty() && conductors.length().metres() > 0) {
				assembly.assume(Assumption.Kind.CONDUCTOR, span.element());
			}
			return copper(span.element(), conductors.power().orElse(LIGHT), conductors.length());
		}
		return new Resistor(span.element(), 0, false);
	}

	private static Resistor copper(String name, Cable.Conductor conductor, Length length) {
		double perMetre = CopperConductor.resistance(conductor).ohmsPerMetre();
		return new Resistor(name, perMetre * length.metres(), true);
	}

	private void enter(SupplyEntry place) {
		PlantCircuit.Terminals terminals = plant.terminals(place.supply());
		Optional<SupplyLead> lead = plant.supply(place.supply()).flatMap(Supply::lead);
		if (lead.isEmpty()) {
			assembly.assume(Assumption.Kind.LEAD, place.supply());
		}
		Resistor wire = wire(place.supply(), lead);
		int supplyWire = terminals.plus().map(plus -> assembly.resistor(plus, supplyNode[place.point()], wire)).orElse(-1);
		int returnWire = assembly.returnOfLead(terminals.minus(), returnNode[place.point()], wire);
		entries.add(new Entry(place, supplyWire >= 0, supplyWire, returnWire));
	}

	private static Resistor wire(String name, Optional<SupplyLead> lead) {
		return lead.map(each -> copper(name, new Cable.Conductor(each.size(), Optional.empty()), each.length()))
				.orElse(new Resistor(name, 0, false));
	}

	private void layDevice(List<AttachedDevice> places) {
		AttachedDevice first = places.get(0);
		FittedDevice device = first.device();
		boolean apart = !device.model().isolations().isEmpty();
		for (AttachedDevice other : places.subList(1, places.size())) {
			if (!apart) {
				assembly.resistor(returnNode[first.point()], returnNode[other.point()], new Resistor(device.name(), 0, false));
			}
		}
		AttachedDevice feeding = places.stream().min((one, other) -> Integer.compare(order(one), order(other))).orElse(first);
		DevicePower power = device.model().power();
		if (power.load().isPresent()) {
			Load load = power.load().get();
			assembly.consumer(device.name(), supplyNode[feeding.point()], returnNode[feeding.point()], LoadDemand.of(load, LoadLevel.NOMINAL).law(),
					power.load(), Optional.of(feeding), 0);
			if (load.most().isEmpty()) {
				assembly.assume(Assumption.Kind.GUARANTEED_LOAD, device.name());
			}
			if (LoadDemand.assumesReference(load)) {
				assembly.assume(Assumption.Kind.REFERENCE_VOLTAGE, device.name());
			}
		} else {
			assembly.consumer(device.name(), supplyNode[feeding.point()], returnNode[feeding.point()], LoadLaw.CURRENT, Optional.empty(),
					Optional.of(feeding), 0);
			assembly.assume(Assumption.Kind.LOAD, device.name());
		}
		feedItself(device, apart ? List.of(first) : places);
	}

	/** The place of a port among those of its device; the text's order where it names none. */
	private static int order(AttachedDevice place) {
		List<String> ports = List.copyOf(place.device().model().ports().keySet());
		return place.port().map(ports::indexOf).orElse(0);
	}

	/** What a device draws from elsewhere; its minus there is that of the network unless its own supply is isolated. */
	private void feedItself(FittedDevice device, List<AttachedDevice> places) {
		if (device.settings().feeds().isEmpty()) {
			return;
		}
		boolean isolated = device.model().power().ownSupply().map(own -> own.isolated()).orElse(true);
		int minus = isolated || places.isEmpty() ? assembly.node() : returnNode[places.get(0).point()];
		Optional<Integer> plus = Optional.empty();
		for (OwnFeed feed : device.settings().feeds()) {
			PlantCircuit.Terminals terminals = plant.terminals(feed.supply());
			Optional<SupplyLead> lead = feed.lead().or(() -> plant.supply(feed.supply()).flatMap(Supply::lead));
			if (lead.isEmpty() && !isolated) {
				assembly.assume(Assumption.Kind.LEAD, device.name());
			}
			Resistor wire = wire(device.name(), lead);
			assembly.returnOfLead(terminals.minus(), minus, wire);
			if (plus.isEmpty()) {
				plus = terminals.plus().map(node -> assembly.beyond(node, wire));
			}
		}
		double draws = device.model().power().ownSupply().flatMap(own -> own.draws()).map(Current::amperes).orElse(0.0);
		if (plus.isPresent() && draws > 0) {
			assembly.consumer(device.name(), plus.get(), minus, LoadLaw.CURRENT, Optional.empty(), Optional.empty(), draws);
		}
	}

	List<Entry> entries() {
		return entries;
	}

	int[] supplyNode() {
		return supplyNode;
	}

	int[] returnNode() {
		return returnNode;
	}

	int[] supplyOfSpan() {
		return supplyOfSpan;
	}

	int[] returnOfSpan() {
		return returnOfSpan;
	}
}
