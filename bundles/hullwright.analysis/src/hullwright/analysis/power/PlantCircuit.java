/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.analysis.circuit.Circuit;
import hullwright.analysis.circuit.LoadLaw;
import hullwright.network.power.Bank;
import hullwright.network.power.Converter;
import hullwright.network.power.PowerPlant;
import hullwright.network.power.PowerState;
import hullwright.network.power.Supply;

/**
 * Lays banks, converters and supplies into a circuit: for each the node of its plus and that of its minus.
 */
final class PlantCircuit {

	/** The terminals of a source; without a plus where it is off or nothing feeds it. */
	record Terminals(Optional<Integer> plus, int minus) {
	}

	private final PowerPlant plant;
	private final SwitchedOn switches;
	private final CircuitAssembly assembly;
	private final Map<String, Terminals> laid = new HashMap<>();
	private final Set<String> laying = new HashSet<>();
	private final List<ConverterInCircuit> converters = new ArrayList<>();

	PlantCircuit(PowerPlant plant, Optional<PowerState> state, CircuitAssembly assembly) {
		this.plant = plant;
		switches = new SwitchedOn(plant, state);
		this.assembly = assembly;
	}

	/** The converters laid so far. */
	List<ConverterInCircuit> converters() {
		return converters;
	}

	/** Lays everything, also what nothing is fed from. */
	void layAll() {
		plant.banks().forEach(bank -> terminals(bank.name()));
		plant.converters().forEach(converter -> terminals(converter.name()));
		plant.supplies().forEach(supply -> terminals(supply.name()));
		if (switches.state().isPresent()) {
			for (String name : switches.state().get().dips().keySet()) {
				if (supply(name).map(each -> each.from().isPresent()).orElse(false)) {
					assembly.assume(Assumption.Kind.DIP, name);
				}
			}
		}
	}

	/** The supply of a name. */
	Optional<Supply> supply(String name) {
		return plant.supplies().stream().filter(each -> each.name().equals(name)).findFirst();
	}

	/** The terminals of a bank, converter or supply. */
	Terminals terminals(String name) {
		Terminals known = laid.get(name);
		if (known == null) {
			if (!laying.add(name)) {
				return new Terminals(Optional.empty(), Circuit.REFERENCE);
			}
			known = lay(name);
			laid.put(name, known);
		}
		return known;
	}

	private Terminals lay(String name) {
		Optional<Bank> bank = plant.banks().stream().filter(each -> each.name().equals(name)).findFirst();
		if (bank.isPresent()) {
			return lay(bank.get());
		}
		Optional<Converter> converter = plant.converters().stream().filter(each -> each.name().equals(name)).findFirst();
		if (converter.isPresent()) {
			return lay(converter.get());
		}
		return supply(name).map(this::lay).orElse(new Terminals(Optional.empty(), Circuit.REFERENCE));
	}

	private Terminals lay(Bank bank) {
		Optional<Integer> inner = assembly.source(bank.name(), bank.voltages(), Circuit.REFERENCE);
		if (bank.resistance().isEmpty()) {
			assembly.assume(Assumption.Kind.BANK_RESISTANCE, bank.name());
		}
		return new Terminals(inner.map(plus -> bank.resistance()
				.map(resistance -> assembly.beyond(plus, new Resistor(bank.name(), resistance.ohms(), false)))
				.orElse(plus)), Circuit.REFERENCE);
	}

	private Terminals lay(Converter converter) {
		Optional<Terminals> from = converter.from().map(this::terminals);
		int inputMinus = from.map(Terminals::minus).orElse(Circuit.REFERENCE);
		int minus = converter.isolated() ? assembly.node() : inputMinus;
		if (!switches.isOn(converter.name())) {
			return new Terminals(Optional.empty(), minus);
		}
		Optional<Integer> plus = assembly.source(converter.name(), converter.voltages(), minus);
		Optional<Integer> input = from.flatMap(Terminals::plus);
		if (plus.isPresent()) {
			int load = input.map(node -> assembly.consumer(converter.name(), node, inputMinus, LoadLaw.POWER, Optional.empty(), Optional.empty(), 0))
					.orElse(-1);
			converters.add(new ConverterInCircuit(converter, assembly.lastSource(), load));
			if (load >= 0 && converter.efficiency().isEmpty()) {
				assembly.assume(Assumption.Kind.EFFICIENCY, converter.name());
			}
		}
		return new Terminals(from.isPresent() && input.isEmpty() ? Optional.empty() : plus, minus);
	}

	private Terminals lay(Supply supply) {
		Terminals behind = supply.from().map(this::terminals).orElseGet(() -> new Terminals(
				assembly.source(supply.name(), supply.voltages(), Circuit.REFERENCE), Circuit.REFERENCE));
		if (!switches.isOn(supply.name())) {
			return new Terminals(Optional.empty(), behind.minus());
		}
		return new Terminals(
				behind.plus().map(plus -> supply.fuse().map(fuse -> assembly.beyondFuse(plus, supply.name(), fuse, behind.minus())).orElse(plus)),
				behind.minus());
	}
}
