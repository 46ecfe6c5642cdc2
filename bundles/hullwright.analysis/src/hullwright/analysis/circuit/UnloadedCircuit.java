/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

import java.util.List;

/**
 * A circuit without its loads, from which a current is drawn at one place at a time: what a short circuit or the test current of a
 * meter does. It is eliminated once; each place costs a substitution.
 */
public final class UnloadedCircuit {

	private final Circuit circuit;
	private final CircuitPlan plan;
	private final double[] offset;
	private final double[] driven;
	private final Elimination.Factors factors;
	private final List<CircuitProblem> problems;

	UnloadedCircuit(Circuit circuit, CircuitPlan plan, double[] offset, double[] driven, Elimination.Factors factors,
			List<CircuitProblem> problems) {
		this.circuit = circuit;
		this.plan = plan;
		this.offset = offset;
		this.driven = driven;
		this.factors = factors;
		this.problems = problems;
	}

	/** The circuit as it stands, with nothing drawn. */
	public Solution open() {
		return drawing(Circuit.REFERENCE, Circuit.REFERENCE, 0);
	}

	/**
	 * The circuit with a current drawn.
	 *
	 * @param plus the node that the current leaves by
	 * @param minus the node that it comes back to, on the same island
	 * @param amperes the current
	 */
	public Solution drawing(int plus, int minus, double amperes) {
		int[] group = plan.forest.group;
		double[] injected = driven.clone();
		double[] potential = new double[injected.length];
		for (int reference : plan.references) {
			potential[group[reference]] = -offset[reference];
		}
		injected[group[plus]] -= amperes;
		injected[group[minus]] += amperes;
		factors.solve(injected, potential);
		double[] voltage = new double[circuit.nodes];
		for (int node = 0; node < voltage.length; node++) {
			double found = potential[group[node]] + offset[node];
			voltage[node] = Double.isFinite(found) ? found : 0;
		}
		return new Solution(circuit, plan, voltage, new double[circuit.amounts.length], problems).withInjected(plus, minus, amperes);
	}
}
