/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.fault.Losses;
import hullwright.analysis.fault.ShortCircuits;
import hullwright.analysis.line.LineFigures;
import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.PowerCircuit;
import hullwright.analysis.wiring.Wiring;
import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.network.Boat;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The electrics of a boat with one network of fifty devices and one power state, in a process that has been running for a while:
 * microseconds for everything, and for its parts.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class WarmElectrics {

	private static final Conditions LOWEST = Conditions.lowest(Optional.empty());

	private Boat boat;
	private Wiring wiring;
	private PowerCircuit circuit;

	/** Generates the boat and refuses to measure one whose circuit has problems. */
	@Setup
	public void generate() {
		BoatsRead read = Checker.create().boats(new CheckRequest(Snapshot.of(GeneratedProject.of(GeneratedProject.DEVICES_PER_NETWORK)),
				Set.of(), new WantedBoats.Plainest(), LocalDate.EPOCH));
		boat = read.boats().get(0);
		wiring = Wiring.of(boat);
		circuit = PowerCircuit.of(boat, wiring, Optional.empty());
		if (wiring.devices().size() != GeneratedProject.DEVICES_PER_NETWORK || !circuit.solve(LOWEST).problems().isEmpty()) {
			throw new IllegalStateException("the generated boat cannot be computed: " + circuit.solve(LOWEST).problems());
		}
	}

	/** Everything that is computed of a boat. */
	@Benchmark
	public Object everything() {
		return BoatElectrics.of(boat);
	}

	/** How its networks are joined. */
	@Benchmark
	public Object wiring() {
		return Wiring.of(boat);
	}

	/** The circuit of one power state, not yet solved. */
	@Benchmark
	public Object circuit() {
		return PowerCircuit.of(boat, wiring, Optional.empty());
	}

	/** One operating point of it. */
	@Benchmark
	public Object operatingPoint() {
		return circuit.solve(LOWEST);
	}

	/** A short circuit at each device and each end of the backbone. */
	@Benchmark
	public Object shortCircuits() {
		return ShortCircuits.of(boat, wiring, circuit, LOWEST);
	}

	/** What is lost with each thing. */
	@Benchmark
	public Object losses() {
		return Losses.of(boat, wiring);
	}

	/** The signal line. */
	@Benchmark
	public Object line() {
		return LineFigures.of(boat, wiring);
	}
}
