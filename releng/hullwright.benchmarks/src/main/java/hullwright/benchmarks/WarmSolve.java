/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.analysis.circuit.Circuit;
import hullwright.analysis.circuit.LoadLaw;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The operating point of a large network in a process that has been running for a while.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class WarmSolve {

	/** How the network runs. */
	@Param({ "COMB", "MESH", "GRID" })
	public String shape;

	/** How its loads behave. */
	@Param({ "CURRENT", "POWER" })
	public String law;

	/** How many nodes it has, about. */
	@Param({ "50", "1000", "10000", "50000" })
	public int nodes;

	private LargeNetwork network;
	private Circuit known;

	/** Lays the network once. */
	@Setup
	public void lay() {
		network = LargeNetwork.of(LargeNetwork.Shape.valueOf(shape), nodes, LoadLaw.valueOf(law));
		known = network.circuit();
		if (!known.solve().problems().isEmpty()) {
			throw new IllegalStateException("the network has no sound operating point: " + known.solve().problems());
		}
	}

	/** Of a circuit that is seen for the first time. */
	@Benchmark
	public Object anew() {
		return network.circuit().solve();
	}

	/** Of one whose order of elimination is known, as for other voltages and temperatures of one boat. */
	@Benchmark
	public Object again() {
		return known.solve();
	}
}
