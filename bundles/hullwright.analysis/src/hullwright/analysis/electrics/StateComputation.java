/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.electrics;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.analysis.fault.ShortCircuit;
import hullwright.analysis.fault.ShortCircuits;
import hullwright.analysis.power.BreakingCurrent;
import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.EntryReading;
import hullwright.analysis.power.PowerCircuit;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.power.SwitchedOn;
import hullwright.analysis.power.TapPlace;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.power.PowerState;
import hullwright.quantity.Current;

/**
 * Computes one power state after the other. States often differ in what no network is fed from: circuits are laid once for the
 * same supplies, and what does not depend on the rest is computed once.
 */
final class StateComputation {

	/** What short circuits on the networks depend on: where they are fed, and by which voltages. */
	private record Feeding(List<Boolean> entries, Map<String, PowerState.Dip> dips) {
	}

	/** What short circuits behind fuses depend on: what is on, and by which voltages. */
	private record Switching(Set<String> on, Map<String, PowerState.Dip> dips) {
	}

	/** What the best places of taps depend on. */
	private record Drawing(List<Boolean> entries, List<Current> currents) {
	}

	private final Boat boat;
	private final Wiring wiring;
	private final Map<Set<String>, PowerCircuit> circuits = new HashMap<>();
	private final Map<Feeding, List<ShortCircuit>> shortCircuits = new HashMap<>();
	private final Map<Switching, List<BreakingCurrent>> breaking = new HashMap<>();
	private final Map<Drawing, List<TapPlace>> taps = new HashMap<>();

	StateComputation(Boat boat, Wiring wiring) {
		this.boat = boat;
		this.wiring = wiring;
	}

	StateElectrics of(Optional<PowerState> state) {
		Set<String> on = new SwitchedOn(boat.power(), state).supplies();
		PowerCircuit circuit = circuits.computeIfAbsent(on, none -> PowerCircuit.of(boat, wiring, state));
		Conditions worst = Conditions.lowest(state);
		PowerFlow lowest = circuit.solve(worst);
		List<Boolean> entries = lowest.entries().stream().map(EntryReading::on).toList();
		Map<String, PowerState.Dip> dips = state.map(PowerState::dips).orElse(Map.of());
		Feeding feeding = new Feeding(entries, dips);
		return new StateElectrics(state, circuit.solve(Conditions.nominal(state)), lowest, circuit.solve(Conditions.highest(state)),
				circuit.solve(Conditions.starting(state)),
				taps.computeIfAbsent(new Drawing(entries, lowest.devices().stream().map(each -> each.current()).toList()),
						drawing -> circuit.tapPlaces(lowest)),
				shortCircuits.computeIfAbsent(feeding, each -> ShortCircuits.of(boat, wiring, circuit, worst)),
				breaking.computeIfAbsent(new Switching(on, dips), each -> circuit.faults(Conditions.highest(state), Set.of()).breakingCurrents()));
	}
}
