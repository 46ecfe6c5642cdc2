/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import hullwright.analysis.circuit.Circuit;
import hullwright.analysis.circuit.Solution;
import hullwright.analysis.circuit.UnloadedCircuit;
import hullwright.analysis.wiring.Medium;
import hullwright.quantity.Current;

/**
 * A boat's circuit with short circuits in it, one at a time, between supply and return. The loads are left out: their voltage is
 * gone. By Thévenin's theorem the current is the open voltage at the place over the
 * resistance that the place shows, and every other current follows by superposition.
 */
public final class FaultCircuit {

	private static final double TEST = 1;

	private final PowerCircuit power;
	private final Set<Integer> opened;
	private final UnloadedCircuit circuit;
	private final Solution open;
	private final int[] conductors;

	FaultCircuit(PowerCircuit power, Conditions conditions, Set<Integer> opened) {
		this.power = power;
		this.opened = opened;
		Circuit valued = power.valued(conditions);
		if (!opened.isEmpty()) {
			valued = valued.withOpen(opened.stream().mapToInt(number -> power.fuses.get(number).resistor()).toArray());
		}
		circuit = valued.unloaded();
		open = circuit.open();
		conductors = IntStream.range(0, power.supplyOfSpan.length)
				.filter(i -> power.wiring.spans().get(i).medium() instanceof Medium.Conductors).toArray();
	}

	/**
	 * The currents of a short circuit.
	 *
	 * @param point the point of the wiring at which it is
	 */
	public FaultCurrents at(int point) {
		int plus = power.supplyNode[point];
		int minus = power.returnNode[point];
		double voltage = open.joined(plus, minus) ? open.voltage(plus) - open.voltage(minus) : 0;
		if (!(voltage > 1e-9)) {
			return new FaultCurrents(Optional.of(new Current(0)), Optional.empty(), List.of(), List.of(), new double[power.supplyOfSpan.length]);
		}
		Solution test = circuit.drawing(plus, minus, TEST);
		double ohms = (voltage - (test.voltage(plus) - test.voltage(minus))) / TEST;
		if (!(ohms > Circuit.NO_RESISTANCE)) {
			return new FaultCurrents(Optional.empty(), Optional.empty(), List.of(), List.of(), new double[power.supplyOfSpan.length]);
		}
		double current = voltage / ohms;
		Optional<String> limitedBy = Optional.empty();
		for (ConverterInCircuit each : power.converters) {
			int source = power.sources.get(each.source()).number();
			double gives = open.sourceCurrent(source) + current * (test.sourceCurrent(source) - open.sourceCurrent(source));
			double most = each.converter().most().map(Current::amperes).orElse(Double.POSITIVE_INFINITY);
			if (gives > most) {
				current *= most / gives;
				limitedBy = Optional.of(each.converter().name());
			}
		}
		return read(test, current, limitedBy);
	}

	private FaultCurrents read(Solution test, double current, Optional<String> limitedBy) {
		List<FaultCurrents.ThroughFuse> fuses = new ArrayList<>();
		for (int i = 0; i < power.fuses.size(); i++) {
			if (!opened.contains(i)) {
				FuseInCircuit fuse = power.fuses.get(i);
				fuses.add(new FaultCurrents.ThroughFuse(i, fuse.owner(), fuse.fuse(), new Current(Math.abs(through(test, current, fuse.resistor())))));
			}
		}
		double[] spans = new double[power.supplyOfSpan.length];
		for (int i : conductors) {
			spans[i] = Math.max(Math.abs(through(test, current, power.supplyOfSpan[i])), Math.abs(through(test, current, power.returnOfSpan[i])));
		}
		List<FaultCurrents.ThroughLead> leads = new ArrayList<>();
		for (Entry each : power.entries) {
			power.leadOf(each).ifPresent(lead -> leads.add(new FaultCurrents.ThroughLead(each.place().supply(), lead.size(),
					new Current(Math.abs(through(test, current, each.supplyWire()))))));
		}
		return new FaultCurrents(Optional.of(new Current(current)), limitedBy, fuses, leads, spans);
	}

	private double through(Solution test, double current, int resistor) {
		if (resistor < 0) {
			return 0;
		}
		double before = open.current(resistor);
		return before + current / TEST * (test.current(resistor) - before);
	}
}
