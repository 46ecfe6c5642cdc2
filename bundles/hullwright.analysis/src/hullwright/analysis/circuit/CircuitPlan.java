/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

import java.util.Arrays;

/**
 * All about a circuit that does not depend on its values: which nodes share an unknown, which islands there are, which loads can
 * be fed at all, and in which order the unknowns are eliminated.
 */
final class CircuitPlan {

	private static final byte JOINT = 0;
	private static final byte RESISTANCE = 1;
	private static final byte OPEN = 2;

	/** Nodes with a common unknown. */
	final RigidForest forest;

	/** The slot of the conductance between the ends of each resistor, -1 where it does not count. */
	final int[] resistorSlot;

	/** The slot of each load whose current follows its voltage, -1 for others. */
	final int[] loadSlot;

	/** Whether a load has a source behind it and a way back. */
	final boolean[] fed;

	/** The island of each group, told by one of its groups. */
	final int[] island;

	/** The nodes whose potential is 0 V, one for each island. */
	final int[] references;

	/** How the unknowns are eliminated. */
	final Elimination elimination;

	private final byte[] kinds;
	private final boolean[] absent;

	private CircuitPlan(Circuit circuit) {
		forest = RigidForest.of(circuit);
		kinds = kinds(circuit);
		absent = absent(circuit);
		int[] group = forest.group;
		island = new int[forest.groups];
		Arrays.setAll(island, each -> each);
		for (int i = 0; i < kinds.length; i++) {
			if (kinds[i] == RESISTANCE) {
				int one = RigidForest.find(island, group[circuit.resistorFrom[i]]);
				island[RigidForest.find(island, group[circuit.resistorTo[i]])] = one;
			}
		}
		for (int i = 0; i < island.length; i++) {
			island[i] = RigidForest.find(island, i);
		}
		int[] referenceOf = referenceOfIslands(circuit, island);
		fed = new boolean[circuit.amounts.length];
		for (int i = 0; i < fed.length; i++) {
			int home = RigidForest.find(island, group[circuit.loadPlus[i]]);
			fed[i] = home == RigidForest.find(island, group[circuit.loadMinus[i]]) && referenceOf[home] < 0;
		}
		references = references(referenceOf, island);
		boolean[] fixed = new boolean[forest.groups];
		for (int reference : references) {
			fixed[group[reference]] = true;
		}
		Elimination.Builder builder = new Elimination.Builder(fixed, circuit.ohms.length + circuit.amounts.length);
		resistorSlot = new int[kinds.length];
		for (int i = 0; i < kinds.length; i++) {
			resistorSlot[i] = kinds[i] == RESISTANCE ? builder.edge(group[circuit.resistorFrom[i]], group[circuit.resistorTo[i]]) : -1;
		}
		loadSlot = new int[fed.length];
		for (int i = 0; i < fed.length; i++) {
			boolean follows = fed[i] && circuit.laws[i] != LoadLaw.CURRENT;
			loadSlot[i] = follows ? builder.edge(group[circuit.loadPlus[i]], group[circuit.loadMinus[i]]) : -1;
		}
		elimination = builder.build();
	}

	static CircuitPlan of(Circuit circuit) {
		return new CircuitPlan(circuit);
	}

	/** Whether a circuit has the same shape, whatever its values. */
	boolean fits(Circuit circuit) {
		return Arrays.equals(kinds, kinds(circuit)) && Arrays.equals(absent, absent(circuit));
	}

	/** By island: the complement of the reference node where there is a source, the reference node itself where there is none. */
	private int[] referenceOfIslands(Circuit circuit, int[] island) {
		int[] group = forest.group;
		int[] referenceOf = new int[forest.groups];
		Arrays.fill(referenceOf, Integer.MAX_VALUE);
		for (int i = 0; i < absent.length; i++) {
			int home = RigidForest.find(island, group[circuit.sourceMinus[i]]);
			if (!absent[i] && referenceOf[home] == Integer.MAX_VALUE) {
				referenceOf[home] = ~circuit.sourceMinus[i];
			}
		}
		int homeOfAll = RigidForest.find(island, group[Circuit.REFERENCE]);
		referenceOf[homeOfAll] = referenceOf[homeOfAll] < 0 ? ~Circuit.REFERENCE : Circuit.REFERENCE;
		for (int node = 0; node < circuit.nodes; node++) {
			int home = RigidForest.find(island, group[node]);
			if (referenceOf[home] == Integer.MAX_VALUE) {
				referenceOf[home] = node;
			}
		}
		return referenceOf;
	}

	private static int[] references(int[] referenceOf, int[] island) {
		int[] references = new int[island.length];
		int count = 0;
		for (int i = 0; i < island.length; i++) {
			if (island[i] == i) {
				references[count++] = referenceOf[i] < 0 ? ~referenceOf[i] : referenceOf[i];
			}
		}
		return Arrays.copyOf(references, count);
	}

	private static byte[] kinds(Circuit circuit) {
		byte[] kinds = new byte[circuit.ohms.length];
		for (int i = 0; i < kinds.length; i++) {
			double ohms = circuit.ohms[i];
			kinds[i] = ohms < Circuit.NO_RESISTANCE ? JOINT : ohms > Circuit.OPEN ? OPEN : RESISTANCE;
		}
		return kinds;
	}

	private static boolean[] absent(Circuit circuit) {
		boolean[] absent = new boolean[circuit.volts.length];
		for (int i = 0; i < absent.length; i++) {
			absent[i] = Double.isNaN(circuit.volts[i]);
		}
		return absent;
	}
}
