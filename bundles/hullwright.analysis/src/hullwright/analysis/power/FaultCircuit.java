/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.ArrayList;
import java.util.Comparator;
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
 * resistance that the place shows, and every other current follows by superposition. A converter that would give more than it can
 * lowers its voltage until it gives what it can.
 */
public final class FaultCircuit {

	private static final double TEST = 1;

	/** What of a current is lost in rounding. */
	private static final double ROUNDING = 1e-9;

	/** Converters beside each other lower their voltages in turn; after so many rounds they have settled. */
	private static final int MOST_ROUNDS = 50;

	private final PowerCircuit power;
	private final Conditions conditions;
	private final Set<Integer> opened;
	private final double[] volts;
	private final UnloadedCircuit circuit;
	private final Solution open;
	private final int[] limited;

	FaultCircuit(PowerCircuit power, Conditions conditions, Set<Integer> opened) {
		this(power, conditions, opened, power.volts(conditions));
	}

	private FaultCircuit(PowerCircuit power, Conditions conditions, Set<Integer> opened, double[] volts) {
		this.power = power;
		this.conditions = conditions;
		this.opened = opened;
		this.volts = volts;
		Circuit valued = power.valued(conditions, volts);
		if (!opened.isEmpty()) {
			valued = valued.withOpen(opened.stream().mapToInt(number -> power.fuses.get(number).resistor()).toArray());
		}
		circuit = valued.unloaded();
		open = circuit.open();
		limited = IntStream.range(0, power.supplyOfSpan.length)
				.filter(i -> power.wiring.spans().get(i).medium() instanceof Medium.Conductors || power.ratedOfSpan.get(i).isPresent()).toArray();
	}

	/**
	 * The currents of a short circuit.
	 *
	 * @param point the point of the wiring at which it is
	 */
	public FaultCurrents at(int point) {
		return between(power.supplyNode[point], power.returnNode[point]);
	}

	/**
	 * The most that each fuse and breaker is asked to break: the current through it in a short circuit right behind it.
	 */
	public List<BreakingCurrent> breakingCurrents() {
		List<BreakingCurrent> breaking = new ArrayList<>();
		for (int i = 0; i < power.fuses.size(); i++) {
			int number = i;
			FuseInCircuit fuse = power.fuses.get(i);
			List<Optional<Current>> asked = fuse.behind().stream().map(side -> through(number, between(side.plus(), side.minus()))).toList();
			Optional<Current> most = asked.contains(Optional.<Current>empty()) ? Optional.empty()
					: asked.stream().flatMap(Optional::stream).max(Comparator.naturalOrder());
			breaking.add(new BreakingCurrent(fuse.owner(), fuse.side(), fuse.fuse(), most));
		}
		return breaking;
	}

	private static Optional<Current> through(int fuse, FaultCurrents currents) {
		return currents.current().map(fault -> currents.fuses().stream().filter(each -> each.number() == fuse).findFirst()
				.map(FaultCurrents.ThroughFuse::current).orElse(new Current(0)));
	}

	private FaultCurrents between(int plus, int minus) {
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
		for (ConverterInCircuit each : power.converters) {
			double gives = gives(each, test, current);
			double most = most(each);
			if (gives > most * (1 + ROUNDING)) {
				boolean alone = gives >= current * (1 - ROUNDING) && Math.abs(open.sourceCurrent(number(each))) <= ROUNDING * gives;
				return alone ? read(test, current * most / gives, Optional.of(each.converter().name())) : limited(plus, minus, each.converter().name());
			}
		}
		return read(test, current, Optional.empty());
	}

	/** With the converters that would give more than they can at the voltages at which they give just that: all is linear in these. */
	private FaultCurrents limited(int plus, int minus, String first) {
		double[] lowered = volts.clone();
		FaultCircuit now = this;
		for (int round = 0; round < MOST_ROUNDS; round++) {
			boolean settled = true;
			for (ConverterInCircuit each : power.converters) {
				double gives = now.gives(each, plus, minus);
				if (gives > most(each) * (1 + ROUNDING)) {
					double[] without = lowered.clone();
					without[number(each)] = 0;
					double then = new FaultCircuit(power, conditions, opened, without).gives(each, plus, minus);
					lowered[number(each)] *= Math.max(0, (most(each) - then) / (gives - then));
					now = new FaultCircuit(power, conditions, opened, lowered.clone());
					settled = false;
				}
			}
			if (settled) {
				break;
			}
		}
		Solution test = now.circuit.drawing(plus, minus, TEST);
		return now.read(test, now.current(plus, minus, test), Optional.of(first));
	}

	private double current(int plus, int minus, Solution test) {
		double voltage = open.voltage(plus) - open.voltage(minus);
		return voltage * TEST / (voltage - (test.voltage(plus) - test.voltage(minus)));
	}

	/** What a converter gives into a short circuit between two nodes. */
	private double gives(ConverterInCircuit converter, int plus, int minus) {
		Solution test = circuit.drawing(plus, minus, TEST);
		return gives(converter, test, current(plus, minus, test));
	}

	private double gives(ConverterInCircuit converter, Solution test, double current) {
		double before = open.sourceCurrent(number(converter));
		return before + current / TEST * (test.sourceCurrent(number(converter)) - before);
	}

	private int number(ConverterInCircuit converter) {
		return power.sources.get(converter.source()).number();
	}

	private static double most(ConverterInCircuit converter) {
		return converter.converter().most().map(Current::amperes).orElse(Double.POSITIVE_INFINITY);
	}

	private FaultCurrents read(Solution test, double current, Optional<String> limitedBy) {
		List<FaultCurrents.ThroughFuse> fuses = new ArrayList<>();
		for (int i = 0; i < power.fuses.size(); i++) {
			if (!opened.contains(i)) {
				FuseInCircuit fuse = power.fuses.get(i);
				fuses.add(new FaultCurrents.ThroughFuse(i, fuse.owner(), fuse.side(), fuse.fuse(), new Current(Math.abs(through(test, current, fuse.resistor())))));
			}
		}
		double[] spans = new double[power.supplyOfSpan.length];
		for (int i : limited) {
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
