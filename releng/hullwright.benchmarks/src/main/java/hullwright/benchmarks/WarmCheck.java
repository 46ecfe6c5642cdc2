/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import java.time.LocalDate;
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
 * A check in a process that has been running for a while, milliseconds for the whole project.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class WarmCheck {

	private static final LocalDate DAY = LocalDate.of(2026, 1, 1);

	/** How many devices the project has. */
	@Param({ "50", "500", "5000" })
	public int devices;

	private Snapshot project;
	private Snapshot changed;
	private Checker running;
	private boolean odd;

	/** Generates the project and refuses to measure one that does not check clean. */
	@Setup
	public void generate() {
		project = Snapshot.of(GeneratedProject.of(devices));
		changed = project.with(GeneratedProject.pathOf(0), GeneratedProject.series(0, 1));
		running = Checker.create();
		var report = running.check(CheckRequest.ofAll(project, DAY));
		if (report.findings().stream().anyMatch(finding -> finding.toString().contains("project/"))) {
			throw new IllegalStateException("the generated project is not understood: " + report.findings().get(0));
		}
	}

	/** Reads and checks everything. */
	@Benchmark
	public Object everything() {
		return Checker.create().check(CheckRequest.ofAll(project, DAY));
	}

	/** Checks again after one file has changed, as an editor does. */
	@Benchmark
	public Object afterOneChange() {
		odd = !odd;
		return running.check(CheckRequest.ofAll(odd ? changed : project, DAY));
	}
}
