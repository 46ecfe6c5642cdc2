/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.analysis.Figures;
import hullwright.analysis.data.DataFlow;
import hullwright.network.Boat;
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
 * How long the flow of data and the traffic of a boat take in a warm process.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class WarmData {

	/** How many devices the boat has. */
	@Param({ "50", "500" })
	public int devices;

	private Boat boat;

	/** Generates the boat and refuses to measure one without traffic. */
	@Setup
	public void generate() {
		boat = GeneratedData.ofDevices(devices);
		if (DataFlow.of(boat).carriers().get(0).messages().size() < 100) {
			throw new IllegalStateException("the generated boat tells too little");
		}
	}

	/** Who tells what to whom. */
	@Benchmark
	public Object dataFlow() {
		return DataFlow.of(boat);
	}

	/** Data flow, traffic with response times, serial lines. */
	@Benchmark
	public Object allData() {
		Figures figures = new Figures(boat);
		return figures.buses().size() + figures.serialLines().size();
	}
}
