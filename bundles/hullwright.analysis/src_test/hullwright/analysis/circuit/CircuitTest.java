/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

/**
 * The kernel against circuits whose answer follows from the laws of Ohm and Kirchhoff by hand.
 */
class CircuitTest {

	private static final double EXACT = 1e-12;

	private final Circuit.Builder circuit = new Circuit.Builder();

	/** 12 V over 2 ohm into 1 A; both conductors. */
	@Test
	void aLoadAtTheEndOfTwoConductors() {
		int plus = circuit.node();
		int farPlus = circuit.node();
		int farMinus = circuit.node();
		int source = circuit.source(Circuit.REFERENCE, plus, 12);
		int supply = circuit.resistor(plus, farPlus, 2);
		int back = circuit.resistor(farMinus, Circuit.REFERENCE, 1);
		int load = circuit.load(farPlus, farMinus, LoadLaw.CURRENT, 1);

		Solution solution = circuit.build().solve();

		assertEquals(List.of(), solution.problems());
		assertEquals(10, solution.voltage(farPlus), EXACT);
		assertEquals(1, solution.voltage(farMinus), EXACT);
		assertEquals(9, solution.loadVoltage(load), EXACT);
		assertEquals(1, solution.current(supply), EXACT);
		assertEquals(1, solution.current(back), EXACT);
		assertEquals(1, solution.sourceCurrent(source), EXACT);
	}

	/** The ends of a joint without resistance have one potential, and its current follows from what leaves it. */
	@Test
	void theCurrentThroughAJointWithoutResistance() {
		int plus = circuit.node();
		int joint = circuit.node();
		int far = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 12);
		int forward = circuit.resistor(plus, joint, 0);
		int backward = circuit.resistor(far, joint, 0);
		circuit.load(far, Circuit.REFERENCE, LoadLaw.RESISTANCE, 6);
		circuit.load(joint, Circuit.REFERENCE, LoadLaw.CURRENT, 3);

		Solution solution = circuit.build().solve();

		assertEquals(12, solution.voltage(far), EXACT);
		assertEquals(5, solution.current(forward), EXACT);
		assertEquals(-2, solution.current(backward), EXACT);
	}

	/** A balanced bridge of resistors carries nothing across; two unlike ones of 1 and 2 ohm do: a mesh with three at each node. */
	@Test
	void aBridgeOfResistors() {
		int plus = circuit.node();
		int left = circuit.node();
		int right = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 10);
		circuit.resistor(plus, left, 1);
		circuit.resistor(plus, right, 2);
		circuit.resistor(left, Circuit.REFERENCE, 2);
		circuit.resistor(right, Circuit.REFERENCE, 1);
		int across = circuit.resistor(left, right, 1);

		Solution solution = circuit.build().solve();

		// by symmetry left + right = 10 V; (10 - l)/1 = l/2 + (l - r)/1 with r = 10 - l gives l = 40/7
		assertEquals(40.0 / 7, solution.voltage(left), EXACT);
		assertEquals(30.0 / 7, solution.voltage(right), EXACT);
		assertEquals(10.0 / 7, solution.current(across), EXACT);
	}

	/** P = U * (E - U) / R: U = E/2 + sqrt(E^2/4 - P * R), the upper of the two points. */
	@Test
	void aLoadOfConstantPowerSettlesAtTheUpperPoint() {
		int plus = circuit.node();
		int far = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 12);
		circuit.resistor(plus, far, 1.5);
		int load = circuit.load(far, Circuit.REFERENCE, LoadLaw.POWER, 20);

		Solution solution = circuit.build().solve();

		assertEquals(6 + Math.sqrt(36 - 30), solution.loadVoltage(load), 1e-11);
		assertEquals(20, solution.loadVoltage(load) * solution.loadCurrent(load), 1e-10);
	}

	/** The most that can be drawn over R from E is E^2 / (4 R), at half the voltage. */
	@Test
	void aLoadThatAsksForMoreThanCanBeFedIsNamed() {
		int plus = circuit.node();
		int far = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 12);
		circuit.resistor(plus, far, 1.5);
		circuit.load(plus, Circuit.REFERENCE, LoadLaw.POWER, 5);
		int load = circuit.load(far, Circuit.REFERENCE, LoadLaw.POWER, 40);

		Solution solution = circuit.build().solve();

		CircuitProblem.CannotBeFed problem = assertInstanceOf(CircuitProblem.CannotBeFed.class, solution.problems().get(0));
		assertEquals(load, problem.load());
		assertEquals(24.0 / 40, problem.share(), 1e-6);
		assertEquals(6, solution.loadVoltage(load), 0.01);
	}

	@Test
	void aCurrentThatWouldTurnTheVoltageRoundCannotBeFed() {
		int plus = circuit.node();
		int far = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 12);
		circuit.resistor(plus, far, 3);
		int load = circuit.load(far, Circuit.REFERENCE, LoadLaw.CURRENT, 8);

		CircuitProblem.CannotBeFed problem = assertInstanceOf(CircuitProblem.CannotBeFed.class,
				circuit.build().solve().problems().get(0));

		assertEquals(load, problem.load());
		assertEquals(0.5, problem.share(), 1e-6);
	}

	@Test
	void aLoadWithoutAWayBackDrawsNothing() {
		int plus = circuit.node();
		int lost = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 12);
		int load = circuit.load(plus, lost, LoadLaw.RESISTANCE, 6);

		Solution solution = circuit.build().solve();

		assertEquals(List.of(new CircuitProblem.Unfed(load)), solution.problems());
		assertEquals(0, solution.loadCurrent(load));
	}

	@Test
	void aLoadWithoutASourceDrawsNothing() {
		int far = circuit.node();
		circuit.resistor(far, Circuit.REFERENCE, 1);
		int load = circuit.load(far, Circuit.REFERENCE, LoadLaw.CURRENT, 1);

		Solution solution = circuit.build().solve();

		assertEquals(List.of(new CircuitProblem.Unfed(load)), solution.problems());
		assertEquals(0, solution.voltage(far));
	}

	@Test
	void loopsWithoutResistanceAreToldAndTheRestIsSolved() {
		int plus = circuit.node();
		int far = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 12);
		circuit.resistor(plus, far, 0);
		int second = circuit.resistor(plus, far, 0);
		int load = circuit.load(far, Circuit.REFERENCE, LoadLaw.CURRENT, 1);

		Solution solution = circuit.build().solve();

		assertEquals(List.of(new CircuitProblem.ZeroResistanceLoop(second)), solution.problems());
		assertEquals(12, solution.loadVoltage(load), EXACT);
	}

	@Test
	void aShortAcrossASourceIsTold() {
		int plus = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 12);
		int wire = circuit.resistor(plus, Circuit.REFERENCE, 0);

		assertEquals(List.of(new CircuitProblem.ShortedSource(wire, 12)), circuit.build().solve().problems());
	}

	@Test
	void sourcesSideBySideWithoutResistanceAreTold() {
		int plus = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 12);
		int second = circuit.source(Circuit.REFERENCE, plus, 13);

		assertEquals(List.of(new CircuitProblem.ParallelSources(second, 1)), circuit.build().solve().problems());
	}

	@Test
	void absurdValuesAreToldAndNothingIsEverNoNumber() {
		int plus = circuit.node();
		int far = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 12);
		int none = circuit.source(Circuit.REFERENCE, far, Double.NaN);
		int negative = circuit.resistor(plus, far, -1);
		int load = circuit.load(plus, Circuit.REFERENCE, LoadLaw.CURRENT, Double.POSITIVE_INFINITY);

		Solution solution = circuit.build().solve();

		assertEquals(List.of(new CircuitProblem.AbsurdResistor(negative, -1), new CircuitProblem.AbsurdSource(none, 0),
				new CircuitProblem.AbsurdLoad(load, 0)), solution.problems());
		assertEquals(0, solution.voltage(far));
		assertEquals(12, solution.loadVoltage(load), EXACT);
	}

	/** An isolated source floats: its minus is the zero of its island. */
	@Test
	void anIslandHasAZeroOfItsOwn() {
		int minus = circuit.node();
		int plus = circuit.node();
		int far = circuit.node();
		circuit.source(minus, plus, 13.8);
		circuit.resistor(plus, far, 1);
		int load = circuit.load(far, minus, LoadLaw.CURRENT, 2);

		Solution solution = circuit.build().solve();

		assertEquals(0, solution.voltage(minus));
		assertEquals(11.8, solution.loadVoltage(load), EXACT);
	}

	/** Random meshes: at every node what flows in flows out, and every resistor obeys Ohm. */
	@Test
	void randomMeshesKeepTheLawsOfKirchhoff() {
		int solved = 0;
		for (int seed = 0; seed < 200; seed++) {
			Random random = new Random(seed);
			Circuit.Builder mesh = new Circuit.Builder();
			int plus = mesh.node();
			int source = mesh.source(Circuit.REFERENCE, plus, 12);
			int nodes = 3 + random.nextInt(60);
			for (int i = 0; i < nodes; i++) {
				int node = mesh.node();
				mesh.resistor(node, random.nextInt(node), 0.005 + random.nextDouble());
			}
			for (int i = 0; i < nodes * 2; i++) {
				mesh.resistor(random.nextInt(nodes), random.nextInt(nodes), random.nextInt(6) == 0 ? 0 : random.nextDouble());
			}
			for (int i = 0; i < nodes / 2; i++) {
				LoadLaw law = LoadLaw.values()[random.nextInt(3)];
				double amount = law == LoadLaw.RESISTANCE ? 20 + 200 * random.nextDouble() : 0.1 * random.nextDouble();
				mesh.load(2 + random.nextInt(nodes - 2), Circuit.REFERENCE, law, amount);
			}
			Circuit built = mesh.build();
			Solution solution = built.solve();
			if (solution.problems().stream().anyMatch(each -> !(each instanceof CircuitProblem.ZeroResistanceLoop))) {
				continue;
			}
			solved++;
			double[] leaving = new double[built.nodes()];
			for (int i = 0; i < built.resistors(); i++) {
				leaving[built.from(i)] += solution.current(i);
				leaving[built.to(i)] -= solution.current(i);
				assertEquals(solution.voltage(built.from(i)) - solution.voltage(built.to(i)), solution.current(i) * built.ohms(i), 1e-9,
						"seed " + seed);
			}
			for (int i = 0; i < built.loads(); i++) {
				leaving[built.loadPlus[i]] += solution.loadCurrent(i);
				leaving[built.loadMinus[i]] -= solution.loadCurrent(i);
			}
			leaving[plus] -= solution.sourceCurrent(source);
			leaving[Circuit.REFERENCE] += solution.sourceCurrent(source);
			for (int node = 0; node < leaving.length; node++) {
				assertEquals(0, leaving[node], 1e-8, "seed " + seed + " node " + node);
			}
		}
		assertTrue(solved >= 100, solved + " of 200 could be solved");
	}

	/** Only one who meshes needs the sparse solver: the rest goes in linear time. */
	@Test
	void treesAndLaddersLeaveNothingToTheSparseSolver() {
		int plus = circuit.node();
		circuit.source(Circuit.REFERENCE, plus, 12);
		int before = plus;
		int beforeMinus = Circuit.REFERENCE;
		for (int i = 0; i < 50; i++) {
			int next = circuit.node();
			int nextMinus = circuit.node();
			circuit.resistor(before, next, 0.1);
			circuit.resistor(beforeMinus, nextMinus, 0.1);
			int device = circuit.node();
			circuit.resistor(next, device, 0.05);
			circuit.load(device, nextMinus, LoadLaw.POWER, 0.1);
			before = next;
			beforeMinus = nextMinus;
		}

		Circuit ladder = circuit.build();

		assertEquals(0, ladder.plan().elimination.coreSize());
		assertTrue(ladder.solve().problems().isEmpty());
	}
}
