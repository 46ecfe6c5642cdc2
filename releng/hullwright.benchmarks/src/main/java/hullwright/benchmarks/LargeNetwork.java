/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.analysis.circuit.Circuit;
import hullwright.analysis.circuit.LoadLaw;
import java.util.Random;

/**
 * The circuit of a network far larger than any boat's: a backbone of two conductors with a device at each of its tees. The same
 * network as our circuit and as a netlist for ngspice, node by node; node 0 is the common negative in both.
 */
final class LargeNetwork {

	/** How its conductors run. */
	enum Shape {
		/** A backbone with drops, no loop but that of the two ends. */
		COMB,
		/** The same, and from each tenth device a second negative to the battery; one tee in fifty is joined to a near one. */
		MESH,
		/** Rows of tees, each joined to the tee beside it in the row before. No boat is like this; loops everywhere are the worst case. */
		GRID
	}

	private static final double VOLTS = 12;

	/** What is lost to the last device, about, in V. */
	private static final double LOST = 1.2;

	private final Circuit.Builder circuit = new Circuit.Builder();
	private final StringBuilder netlist = new StringBuilder();
	private final LoadLaw law;
	private int nodes = 1;
	private int elements;

	private LargeNetwork(LoadLaw law) {
		this.law = law;
	}

	/**
	 * A network.
	 *
	 * @param wantedNodes about how many nodes it shall have
	 * @param law how the loads behave
	 */
	static LargeNetwork of(Shape shape, int wantedNodes, LoadLaw law) {
		LargeNetwork network = new LargeNetwork(law);
		network.netlist.append("* ").append(shape).append(' ').append(wantedNodes).append(' ').append(law).append('\n');
		network.lay(shape, Math.max(1, wantedNodes / 4), new Random(wantedNodes));
		network.netlist.append(".options reltol=1e-9 abstol=1e-9 vntol=1e-10 itl1=1000\n.op\n.end\n");
		return network;
	}

	private void lay(Shape shape, int tees, Random random) {
		int supply = node();
		circuit.source(0, supply, VOLTS);
		line("V", supply, 0, VOLTS);
		int[] supplyAt = new int[tees];
		int[] returnAt = new int[tees];
		int row = (int) Math.ceil(Math.sqrt(tees));
		// along a backbone the loss grows with the number of tees and with that of the devices behind each
		double amperes = LOST / (0.1 * tees * (shape == Shape.GRID ? 10 : tees));
		for (int tee = 0; tee < tees; tee++) {
			supplyAt[tee] = wire(tee == 0 ? supply : supplyAt[tee - 1], 0.02 + 0.16 * random.nextDouble());
			returnAt[tee] = wire(tee == 0 ? 0 : returnAt[tee - 1], 0.02 + 0.16 * random.nextDouble());
			int plus = wire(supplyAt[tee], 0.05 + 0.1 * random.nextDouble());
			int minus = wire(returnAt[tee], 0.05 + 0.1 * random.nextDouble());
			load(plus, minus, amperes * (0.5 + random.nextDouble()));
			if (shape == Shape.GRID && tee >= row) {
				resistor(supplyAt[tee], supplyAt[tee - row], 0.1);
				resistor(returnAt[tee], returnAt[tee - row], 0.1);
			}
			if (shape == Shape.MESH && tee % 10 == 9) {
				// the wire to a device that lies far from the battery is as long as the backbone to it
				resistor(minus, 0, 0.05 * (tee + 1) + 0.1);
			}
			if (shape == Shape.MESH && tee % 50 == 49) {
				int other = tee - 2 - random.nextInt(40);
				resistor(supplyAt[tee], supplyAt[other], 0.5);
				resistor(returnAt[tee], returnAt[other], 0.5);
			}
		}
	}

	private int node() {
		nodes++;
		return circuit.node();
	}

	private int wire(int from, double ohms) {
		int to = node();
		resistor(from, to, ohms);
		return to;
	}

	private void resistor(int from, int to, double ohms) {
		circuit.resistor(from, to, ohms);
		line("R", from, to, ohms);
	}

	private void load(int plus, int minus, double amperes) {
		switch (law) {
		case CURRENT -> {
			circuit.load(plus, minus, law, amperes);
			line("I", plus, minus, amperes);
		}
		case POWER -> {
			circuit.load(plus, minus, law, amperes * VOLTS);
			// below half the voltage ngspice need not look for the answer
			netlist.append('B').append(++elements).append(' ').append(plus).append(' ').append(minus).append(" I=").append(amperes * VOLTS)
					.append("/max(v(").append(plus).append(',').append(minus).append("),").append(VOLTS / 2).append(")\n");
		}
		default -> throw new IllegalArgumentException("loads of constant current or power only");
		}
	}

	private void line(String letter, int plus, int minus, double value) {
		netlist.append(letter).append(++elements).append(' ').append(plus).append(' ').append(minus).append(' ').append(value).append('\n');
	}

	/** How many nodes it has, the common negative included. */
	int nodes() {
		return nodes;
	}

	/** A new circuit, of which nothing is known yet but its elements. */
	Circuit circuit() {
		return circuit.build();
	}

	/** The netlist. */
	String netlist() {
		return netlist.toString();
	}
}
