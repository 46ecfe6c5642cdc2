/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

/**
 * Why a circuit has no operating point, or one only in part. Elements are named by the number that {@link Circuit.Builder} gave
 * them.
 */
public sealed interface CircuitProblem {

	/** A resistor whose value is negative or no number; it was taken as open. */
	record AbsurdResistor(int resistor, double ohms) implements CircuitProblem {
	}

	/** A source whose value is no number; it was left out. */
	record AbsurdSource(int source, double volts) implements CircuitProblem {
	}

	/** A load whose value is negative or no number; it was taken to draw nothing. */
	record AbsurdLoad(int load, double value) implements CircuitProblem {
	}

	/** A resistor of 0 ohm that closes a loop of such: nothing tells how the current divides. It was taken as open. */
	record ZeroResistanceLoop(int resistor) implements CircuitProblem {
	}

	/** A resistor of 0 ohm across a voltage, which would drive an endless current. It was taken as open. */
	record ShortedSource(int resistor, double volts) implements CircuitProblem {
	}

	/**
	 * A source in parallel with others, without any resistance between. It was left out.
	 *
	 * @param difference by how much it differs from what is there already; with 0 V nothing tells how they share the current
	 */
	record ParallelSources(int source, double difference) implements CircuitProblem {
	}

	/** A load without a source behind it, or without a way back to one. It draws nothing. */
	record Unfed(int load) implements CircuitProblem {
	}

	/**
	 * Loads ask for more than the circuit can give: the voltage breaks down.
	 *
	 * @param load the load whose voltage sinks most
	 * @param share which part of all loads can still be fed, 0 to 1; the solution is that of this part
	 */
	record CannotBeFed(int load, double share) implements CircuitProblem {
	}

	/** Values so far apart that double precision leaves no answer at this node. */
	record OutOfRange(int node) implements CircuitProblem {
	}
}
