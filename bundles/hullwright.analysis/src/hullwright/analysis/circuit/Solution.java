/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

import java.util.List;

/**
 * An operating point: potentials and currents of a circuit, in V and A, none of them ever infinite or NaN. Where
 * {@link #problems} is not empty it is that of the part of the circuit that can be solved.
 */
public final class Solution {

	private final Circuit circuit;
	private final CircuitPlan plan;
	private final double[] voltage;
	private final double[] drawn;
	private final List<CircuitProblem> problems;
	private double[] tied;
	private int injectedFrom;
	private int injectedInto;
	private double injected;

	Solution(Circuit circuit, CircuitPlan plan, double[] voltage, double[] drawn, List<CircuitProblem> problems) {
		this.circuit = circuit;
		this.plan = plan;
		this.voltage = voltage;
		this.drawn = drawn;
		this.problems = List.copyOf(problems);
	}

	Solution withInjected(int plus, int minus, double amperes) {
		injectedFrom = plus;
		injectedInto = minus;
		injected = amperes;
		return this;
	}

	/** What kept the circuit from being solved as it is; empty if nothing did. */
	public List<CircuitProblem> problems() {
		return problems;
	}

	/** The potential of a node; 0 V is that of {@link Circuit#REFERENCE}, or in an island without it that of its first source's minus. */
	public double voltage(int node) {
		return voltage[node];
	}

	/** Whether a conducting way leads from one node to the other; if not, the difference of their potentials means nothing. */
	public boolean joined(int one, int other) {
		return plan.island[plan.forest.group[one]] == plan.island[plan.forest.group[other]];
	}

	/** The voltage across a load. */
	public double loadVoltage(int load) {
		return voltage[circuit.loadPlus[load]] - voltage[circuit.loadMinus[load]];
	}

	/** The current of a load; 0 if it is not fed. */
	public double loadCurrent(int load) {
		return drawn[load];
	}

	/** The current through a resistor in the direction in which it was given; through a joint that closes a loop 0. */
	public double current(int resistor) {
		double ohms = circuit.ohms[resistor];
		if (ohms > Circuit.OPEN) {
			return 0;
		}
		if (ohms >= Circuit.NO_RESISTANCE) {
			return (voltage[circuit.resistorFrom[resistor]] - voltage[circuit.resistorTo[resistor]]) / ohms;
		}
		int child = childTiedBy(resistor, circuit.resistorFrom[resistor], circuit.resistorTo[resistor]);
		if (child < 0) {
			return 0;
		}
		return child == circuit.resistorTo[resistor] ? tied()[child] : -tied()[child];
	}

	/** The current that a source gives, out of its plus. */
	public double sourceCurrent(int source) {
		int child = childTiedBy(~source, circuit.sourceMinus[source], circuit.sourcePlus[source]);
		if (child < 0) {
			return 0;
		}
		return child == circuit.sourcePlus[source] ? tied()[child] : -tied()[child];
	}

	private int childTiedBy(int element, int one, int other) {
		RigidForest forest = plan.forest;
		if (forest.parent[one] >= 0 && forest.tie[one] == element) {
			return one;
		}
		return forest.parent[other] >= 0 && forest.tie[other] == element ? other : -1;
	}

	/** The current into each node from its parent: what leaves it otherwise, by Kirchhoff's current law. */
	private double[] tied() {
		if (tied == null) {
			double[] leaving = new double[circuit.nodes];
			for (int i = 0; i < circuit.ohms.length; i++) {
				double ohms = circuit.ohms[i];
				if (ohms >= Circuit.NO_RESISTANCE && ohms <= Circuit.OPEN) {
					double through = current(i);
					leaving[circuit.resistorFrom[i]] += through;
					leaving[circuit.resistorTo[i]] -= through;
				}
			}
			for (int load = 0; load < drawn.length; load++) {
				leaving[circuit.loadPlus[load]] += drawn[load];
				leaving[circuit.loadMinus[load]] -= drawn[load];
			}
			leaving[injectedFrom] += injected;
			leaving[injectedInto] -= injected;
			int[] order = plan.forest.order;
			for (int i = order.length - 1; i >= 0; i--) {
				int parent = plan.forest.parent[order[i]];
				if (parent >= 0) {
					leaving[parent] += leaving[order[i]];
				}
			}
			tied = leaving;
		}
		return tied;
	}
}
