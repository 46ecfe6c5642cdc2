/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the operating point of a circuit by nodal analysis.
 *
 * <p>Loads of constant power make it nonlinear: P/U is convex in the voltage, so Newton's iteration from the open-circuit
 * voltages comes down to the upper of the two possible points and never passes it (Newton-Fourier); if a pivot turns negative
 * or a load's voltage vanishes on the way there is no such point.
 */
final class OperatingPoint {

	private static final int MOST_ITERATIONS = 100;

	/**
	 * An iteration that moves no potential by more than this fraction of the largest voltage is the last: the error left goes
	 * with the square of the step.
	 */
	private static final double SETTLED = 1e-9;

	/** How finely the share of the loads that can be fed is found: one part in 2 to this power. */
	private static final int BISECTIONS = 30;

	private final Circuit circuit;
	private final CircuitPlan plan;
	private final List<CircuitProblem> problems;
	private final double[] offset;
	private final int[] group;
	private final double[] conductance;
	private final double[] injected;
	private final double[] potential;
	private final double[] ofResistors;
	private final double[] drivenByResistors;
	private double feedable = 1;

	OperatingPoint(Circuit circuit, CircuitPlan plan, List<CircuitProblem> absurdities) {
		this.circuit = circuit;
		this.plan = plan;
		problems = new ArrayList<>(absurdities);
		offset = plan.forest.offsets(circuit);
		group = plan.forest.group;
		conductance = plan.elimination.conductances();
		injected = plan.elimination.perUnknown();
		potential = plan.elimination.perUnknown();
		prepare();
		ofResistors = conductance.clone();
		drivenByResistors = injected.clone();
	}

	Solution solve() {
		tellRejected();
		boolean[] drawing = plan.fed.clone();
		for (int load = 0; load < drawing.length; load++) {
			if (!plan.fed[load] && draws(load)) {
				problems.add(new CircuitProblem.Unfed(load));
			}
		}
		double[] solved = fixedPoint(1, drawing, null);
		if (solved == null || !allPositive(solved, drawing)) {
			solved = greatestShare(drawing);
		}
		return finished(solved, drawing);
	}

	/** The circuit without its loads, ready for currents drawn anywhere. */
	UnloadedCircuit unloaded() {
		tellRejected();
		return new UnloadedCircuit(circuit, plan, offset, drivenByResistors, plan.elimination.factor(ofResistors).orElseThrow(), problems);
	}

	private void tellRejected() {
		for (int resistor : plan.forest.rejectedResistors) {
			double across = offset[circuit.resistorFrom[resistor]] - offset[circuit.resistorTo[resistor]];
			problems.add(Math.abs(across) < 1e-12 ? new CircuitProblem.ZeroResistanceLoop(resistor)
					: new CircuitProblem.ShortedSource(resistor, across));
		}
		for (int source : plan.forest.rejectedSources) {
			double there = offset[circuit.sourcePlus[source]] - offset[circuit.sourceMinus[source]];
			problems.add(new CircuitProblem.ParallelSources(source, circuit.volts[source] - there));
		}
	}

	/** The potentials of the groups when every load draws this share, or null if there is no such point. */
	private double[] fixedPoint(double share, boolean[] drawing, double[] openCircuit) {
		boolean nonlinear = false;
		for (int load = 0; load < drawing.length; load++) {
			nonlinear |= drawing[load] && circuit.laws[load] == LoadLaw.POWER && draws(load);
		}
		if (!nonlinear) {
			return linear(share, drawing, null) ? potential.clone() : null;
		}
		double[] at = openCircuit;
		if (at == null) {
			linear(0, drawing, null);
			at = potential.clone();
			dropThoseWithoutVoltage(at, drawing);
		}
		double largest = largest(at);
		for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
			if (!linear(share, drawing, at)) {
				return null;
			}
			double moved = 0;
			for (int i = 0; i < at.length; i++) {
				moved = Math.max(moved, Math.abs(potential[i] - at[i]));
			}
			at = potential.clone();
			if (moved <= SETTLED * largest) {
				return at;
			}
			if (!allPositive(at, drawing)) {
				return null;
			}
		}
		return null;
	}

	/** Solves with the loads of constant power replaced by their tangents at the given potentials; without those if null. */
	private boolean linear(double share, boolean[] drawing, double[] at) {
		System.arraycopy(ofResistors, 0, conductance, 0, conductance.length);
		System.arraycopy(drivenByResistors, 0, injected, 0, injected.length);
		for (int load = 0; load < drawing.length; load++) {
			double amount = circuit.amounts[load];
			if (!drawing[load] || share == 0 || !draws(load)) {
				continue;
			}
			switch (circuit.laws[load]) {
			case CURRENT -> inject(load, -share * amount);
			case RESISTANCE -> conduct(load, share / amount);
			case POWER -> {
				if (at != null) {
					double voltage = across(load, at);
					conduct(load, -share * amount / (voltage * voltage));
					inject(load, -2 * share * amount / voltage);
				}
			}
			}
		}
		Optional<Elimination.Factors> factors = plan.elimination.factor(conductance);
		factors.ifPresent(each -> each.solve(injected, potential));
		return factors.isPresent();
	}

	/** The conductances of the resistors, and the currents that the fixed differences within groups drive through them. */
	private void prepare() {
		for (int reference : plan.references) {
			potential[group[reference]] = -offset[reference];
		}
		for (int i = 0; i < circuit.ohms.length; i++) {
			if (plan.resistorSlot[i] >= 0) {
				add(plan.resistorSlot[i], circuit.resistorFrom[i], circuit.resistorTo[i], 1 / circuit.ohms[i]);
			}
		}
	}

	private void add(int slot, int from, int to, double siemens) {
		conductance[slot] += siemens;
		double driven = siemens * (offset[from] - offset[to]);
		injected[group[from]] -= driven;
		injected[group[to]] += driven;
	}

	private void conduct(int load, double siemens) {
		if (plan.loadSlot[load] >= 0) {
			add(plan.loadSlot[load], circuit.loadPlus[load], circuit.loadMinus[load], siemens);
		}
	}

	private void inject(int load, double amperes) {
		injected[group[circuit.loadPlus[load]]] += amperes;
		injected[group[circuit.loadMinus[load]]] -= amperes;
	}

	private double[] greatestShare(boolean[] drawing) {
		linear(0, drawing, null);
		double[] open = potential.clone();
		dropThoseWithoutVoltage(open, drawing);
		double[] whole = fixedPoint(1, drawing, open);
		if (whole != null && allPositive(whole, drawing)) {
			return whole;
		}
		double[] best = open;
		double low = 0;
		double high = 1;
		for (int i = 0; i < BISECTIONS; i++) {
			double middle = (low + high) / 2;
			double[] found = fixedPoint(middle, drawing, open);
			if (found != null && allPositive(found, drawing)) {
				low = middle;
				best = found;
			} else {
				high = middle;
			}
		}
		int weakest = -1;
		double least = Double.POSITIVE_INFINITY;
		for (int load = 0; load < drawing.length; load++) {
			if (drawing[load] && draws(load)) {
				double left = across(load, best) / across(load, open);
				if (left < least) {
					least = left;
					weakest = load;
				}
			}
		}
		problems.add(new CircuitProblem.CannotBeFed(weakest, low));
		feedable = low;
		return best;
	}

	private Solution finished(double[] solved, boolean[] drawing) {
		double[] voltage = new double[circuit.nodes];
		for (int node = 0; node < voltage.length; node++) {
			voltage[node] = solved[group[node]] + offset[node];
			if (!Double.isFinite(voltage[node])) {
				problems.add(new CircuitProblem.OutOfRange(node));
				voltage[node] = 0;
			}
		}
		double[] drawn = new double[drawing.length];
		for (int load = 0; load < drawn.length; load++) {
			drawn[load] = drawing[load] && draws(load) ? feedable * current(load, voltage) : 0;
		}
		return new Solution(circuit, plan, voltage, drawn, problems);
	}

	private double current(int load, double[] voltage) {
		double across = voltage[circuit.loadPlus[load]] - voltage[circuit.loadMinus[load]];
		double amount = circuit.amounts[load];
		return switch (circuit.laws[load]) {
		case CURRENT -> amount;
		case RESISTANCE -> across / amount;
		case POWER -> across > 0 ? amount / across : 0;
		};
	}

	private void dropThoseWithoutVoltage(double[] open, boolean[] drawing) {
		for (int load = 0; load < drawing.length; load++) {
			if (drawing[load] && draws(load) && !(across(load, open) > 1e-9)) {
				drawing[load] = false;
				problems.add(new CircuitProblem.Unfed(load));
			}
		}
	}

	private boolean allPositive(double[] at, boolean[] drawing) {
		for (int load = 0; load < drawing.length; load++) {
			if (drawing[load] && draws(load) && !(across(load, at) > 0)) {
				return false;
			}
		}
		return true;
	}

	private boolean draws(int load) {
		return circuit.laws[load] == LoadLaw.RESISTANCE ? circuit.amounts[load] < Circuit.OPEN : circuit.amounts[load] > 0;
	}

	private double across(int load, double[] at) {
		int plus = circuit.loadPlus[load];
		int minus = circuit.loadMinus[load];
		return at[group[plus]] + offset[plus] - at[group[minus]] - offset[minus];
	}

	private double largest(double[] at) {
		double largest = 0;
		for (int node = 0; node < circuit.nodes; node++) {
			largest = Math.max(largest, Math.abs(at[group[node]] + offset[node]));
		}
		return Math.max(largest, 1e-9);
	}
}
