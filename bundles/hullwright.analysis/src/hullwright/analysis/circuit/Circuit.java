/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A circuit of resistors, ideal voltage sources and loads between numbered nodes. Immutable. Values can be exchanged
 * ({@link #withValues}) while the order in which the nodes are eliminated is kept, so that many operating points of one boat
 * cost little more than their arithmetic.
 */
public final class Circuit {

	/** A resistor below this is a joint without resistance: its nodes have the same potential. In ohm. */
	public static final double NO_RESISTANCE = 1e-9;

	/** A resistor above this is an open circuit. In ohm. */
	public static final double OPEN = 1e12;

	/** The node whose potential is 0 V wherever a conducting way leads to it. */
	public static final int REFERENCE = 0;

	final int nodes;
	final int[] resistorFrom;
	final int[] resistorTo;
	final double[] ohms;
	final int[] sourceMinus;
	final int[] sourcePlus;
	final double[] volts;
	final int[] loadPlus;
	final int[] loadMinus;
	final LoadLaw[] laws;
	final double[] amounts;
	private final List<CircuitProblem> absurdities;
	private CircuitPlan plan;

	private Circuit(Circuit shape, double[] ohms, double[] volts, double[] amounts) {
		nodes = shape.nodes;
		resistorFrom = shape.resistorFrom;
		resistorTo = shape.resistorTo;
		sourceMinus = shape.sourceMinus;
		sourcePlus = shape.sourcePlus;
		loadPlus = shape.loadPlus;
		loadMinus = shape.loadMinus;
		laws = shape.laws;
		this.ohms = ohms;
		this.volts = volts;
		this.amounts = amounts;
		absurdities = List.copyOf(replaceAbsurdities());
		plan = shape.plan();
	}

	private Circuit(Builder builder) {
		nodes = builder.nodes;
		resistorFrom = builder.resistorFrom.toArray();
		resistorTo = builder.resistorTo.toArray();
		ohms = builder.ohms.toArray();
		sourceMinus = builder.sourceMinus.toArray();
		sourcePlus = builder.sourcePlus.toArray();
		volts = builder.volts.toArray();
		loadPlus = builder.loadPlus.toArray();
		loadMinus = builder.loadMinus.toArray();
		laws = builder.laws.toArray(LoadLaw[]::new);
		amounts = builder.amounts.toArray();
		absurdities = List.copyOf(replaceAbsurdities());
	}

	/** How many nodes there are. */
	public int nodes() {
		return nodes;
	}

	/** How many resistors there are. */
	public int resistors() {
		return ohms.length;
	}

	/** How many loads there are. */
	public int loads() {
		return amounts.length;
	}

	/** The node at which a resistor begins. */
	public int from(int resistor) {
		return resistorFrom[resistor];
	}

	/** The node at which a resistor ends. */
	public int to(int resistor) {
		return resistorTo[resistor];
	}

	/** A resistor's value in ohm. */
	public double ohms(int resistor) {
		return ohms[resistor];
	}

	/** A source's value in V; 0 if it is absurd. */
	public double volts(int source) {
		return Double.isNaN(volts[source]) ? 0 : volts[source];
	}

	/**
	 * The same circuit with other values; each array is as long as there are elements of its kind.
	 *
	 * @param newOhms the resistors, in ohm
	 * @param newVolts the sources, in V
	 * @param newAmounts the loads, in the unit of their law
	 */
	public Circuit withValues(double[] newOhms, double[] newVolts, double[] newAmounts) {
		if (newOhms.length != ohms.length || newVolts.length != volts.length || newAmounts.length != amounts.length) {
			throw new IllegalArgumentException("other values for each element are expected, not for more or fewer");
		}
		return new Circuit(this, newOhms.clone(), newVolts.clone(), newAmounts.clone());
	}

	/** The same circuit with some of its resistors taken out. */
	public Circuit withOpen(int... resistors) {
		double[] opened = ohms.clone();
		for (int resistor : resistors) {
			opened[resistor] = Double.POSITIVE_INFINITY;
		}
		return withValues(opened, volts, amounts);
	}

	/** The operating point. */
	public Solution solve() {
		return new OperatingPoint(this, plan(), absurdities).solve();
	}

	/** The circuit without its loads, for currents drawn at one place at a time. */
	public UnloadedCircuit unloaded() {
		return new OperatingPoint(this, plan(), absurdities).unloaded();
	}

	synchronized CircuitPlan plan() {
		if (plan == null || !plan.fits(this)) {
			plan = CircuitPlan.of(this);
		}
		return plan;
	}

	private List<CircuitProblem> replaceAbsurdities() {
		List<CircuitProblem> found = new ArrayList<>();
		for (int i = 0; i < ohms.length; i++) {
			if (!(ohms[i] >= 0)) {
				found.add(new CircuitProblem.AbsurdResistor(i, finite(ohms[i])));
				ohms[i] = Double.POSITIVE_INFINITY;
			}
		}
		for (int i = 0; i < volts.length; i++) {
			if (!Double.isFinite(volts[i])) {
				found.add(new CircuitProblem.AbsurdSource(i, 0));
				volts[i] = Double.NaN;
			}
		}
		for (int i = 0; i < amounts.length; i++) {
			boolean sound = Double.isFinite(amounts[i]) && amounts[i] >= 0 || amounts[i] > 0 && laws[i] == LoadLaw.RESISTANCE;
			if (!sound || laws[i] == LoadLaw.RESISTANCE && amounts[i] < NO_RESISTANCE) {
				found.add(new CircuitProblem.AbsurdLoad(i, finite(amounts[i])));
				amounts[i] = laws[i] == LoadLaw.RESISTANCE ? Double.POSITIVE_INFINITY : 0;
			}
		}
		return found;
	}

	private static double finite(double value) {
		return Double.isFinite(value) ? value : 0;
	}

	/** Gathers a circuit, element by element; every element gets the next number of its kind, from 0. */
	public static final class Builder {

		private int nodes = 1;
		private final Ints resistorFrom = new Ints();
		private final Ints resistorTo = new Ints();
		private final Doubles ohms = new Doubles();
		private final Ints sourceMinus = new Ints();
		private final Ints sourcePlus = new Ints();
		private final Doubles volts = new Doubles();
		private final Ints loadPlus = new Ints();
		private final Ints loadMinus = new Ints();
		private final List<LoadLaw> laws = new ArrayList<>();
		private final Doubles amounts = new Doubles();

		/** A new node; node 0, the {@link Circuit#REFERENCE}, is there from the start. */
		public int node() {
			return nodes++;
		}

		/** A resistor; 0 ohm joins its nodes, infinity leaves them apart. */
		public int resistor(int from, int to, double value) {
			resistorFrom.add(known(from));
			resistorTo.add(known(to));
			return ohms.add(value);
		}

		/** An ideal voltage source: the potential of plus lies this much above that of minus. */
		public int source(int minus, int plus, double value) {
			sourceMinus.add(known(minus));
			sourcePlus.add(known(plus));
			return volts.add(value);
		}

		/** A load, whose current flows from plus to minus. */
		public int load(int plus, int minus, LoadLaw law, double amount) {
			loadPlus.add(known(plus));
			loadMinus.add(known(minus));
			laws.add(law);
			return amounts.add(amount);
		}

		/** The circuit gathered so far. */
		public Circuit build() {
			return new Circuit(this);
		}

		private int known(int node) {
			if (node < 0 || node >= nodes) {
				throw new IndexOutOfBoundsException("there is no node " + node);
			}
			return node;
		}
	}

	/** A growing row of whole numbers. */
	private static final class Ints {

		private int[] values = new int[64];
		private int size;

		void add(int value) {
			if (size == values.length) {
				values = Arrays.copyOf(values, size * 2);
			}
			values[size++] = value;
		}

		int[] toArray() {
			return Arrays.copyOf(values, size);
		}
	}

	/** A growing row of numbers. */
	private static final class Doubles {

		private double[] values = new double[64];
		private int size;

		int add(double value) {
			if (size == values.length) {
				values = Arrays.copyOf(values, size * 2);
			}
			values[size] = value;
			return size++;
		}

		double[] toArray() {
			return Arrays.copyOf(values, size);
		}
	}
}
