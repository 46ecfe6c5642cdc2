/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import hullwright.analysis.circuit.Circuit;
import hullwright.analysis.circuit.LoadLaw;
import hullwright.analysis.wiring.AttachedDevice;
import hullwright.analysis.wiring.BackboneSide;
import hullwright.network.part.Fuse;
import hullwright.network.part.Load;
import hullwright.network.power.Voltages;

/**
 * A boat's circuit while it is put together: the numbered elements and what each of them stands for.
 */
final class CircuitAssembly {

	private final Circuit.Builder circuit = new Circuit.Builder();
	private final List<Resistor> resistors = new ArrayList<>();
	private final List<SourceOfPower> sources = new ArrayList<>();
	private final List<Consumer> consumers = new ArrayList<>();
	private final List<FuseInCircuit> fuses = new ArrayList<>();
	private final Set<Integer> returnsOfLeads = new HashSet<>();
	private final List<PowerProblem> problems = new ArrayList<>();
	private final Assumptions assumptions = new Assumptions();

	int node() {
		return circuit.node();
	}

	int resistor(int from, int to, Resistor resistor) {
		resistors.add(resistor);
		return circuit.resistor(from, to, resistor.ohms());
	}

	/** The return wire of a lead. */
	int returnOfLead(int from, int to, Resistor wire) {
		int number = resistor(from, to, wire);
		returnsOfLeads.add(number);
		return number;
	}

	/** The node behind a new resistor. */
	int beyond(int node, Resistor resistor) {
		int behind = circuit.node();
		resistor(node, behind, resistor);
		return behind;
	}

	/** The node behind a fuse that feeds a circuit with a return of its own. */
	int beyondFuse(int node, String owner, Fuse fuse, int minus) {
		int behind = circuit.node();
		fuse(node, behind, owner, Optional.empty(), fuse, List.of(new FuseInCircuit.Side(behind, minus)));
		return behind;
	}

	int fuse(int from, int to, String owner, Optional<BackboneSide> side, Fuse fuse, List<FuseInCircuit.Side> behind) {
		int number = resistor(from, to, new Resistor(owner, resistance(owner, fuse), false));
		fuses.add(new FuseInCircuit(owner, side, fuse, number, behind));
		return number;
	}

	/** A fuse drops its kind's voltage at its rated current. */
	private double resistance(String owner, Fuse fuse) {
		Optional<Double> ohms = fuse.kind().flatMap(kind -> kind.drop()).map(drop -> drop.volts() / fuse.rating().amperes());
		if (ohms.isEmpty()) {
			assume(Assumption.Kind.FUSE_RESISTANCE, owner);
		}
		return ohms.orElse(0.0);
	}

	/** The plus of a new source, unless nothing states its voltage. */
	Optional<Integer> source(String name, Voltages voltages, int minus) {
		if (!voltages.isStated()) {
			problems.add(new PowerProblem.NoVoltage(name));
			return Optional.empty();
		}
		int plus = circuit.node();
		sources.add(new SourceOfPower(name, voltages, circuit.source(minus, plus, 0)));
		return Optional.of(plus);
	}

	int lastSource() {
		return sources.size() - 1;
	}

	int consumer(String name, int plus, int minus, LoadLaw law, Optional<Load> load, Optional<AttachedDevice> attached, double draws) {
		int number = circuit.load(plus, minus, law, 0);
		consumers.add(new Consumer(name, number, plus, minus, load, attached, draws));
		return number;
	}

	void assume(Assumption.Kind kind, String subject) {
		assumptions.note(kind, subject);
	}

	Circuit circuit() {
		return circuit.build();
	}

	List<Resistor> resistors() {
		return resistors;
	}

	List<SourceOfPower> sources() {
		return sources;
	}

	List<Consumer> consumers() {
		return consumers;
	}

	List<FuseInCircuit> fuses() {
		return fuses;
	}

	Set<Integer> returnsOfLeads() {
		return returnsOfLeads;
	}

	List<PowerProblem> problems() {
		return problems;
	}

	List<Assumption> assumptions() {
		return assumptions.all();
	}
}
