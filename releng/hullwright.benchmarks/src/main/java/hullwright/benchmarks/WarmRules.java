/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.analysis.Figures;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.LoadedRule;
import hullwright.check.Snapshot;
import hullwright.network.Boat;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.HouseDemands;
import hullwright.rules.RuleInForce;
import java.time.LocalDate;
import java.util.List;
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
 * All rules that ship on one boat of fifty devices, in a process that has been running for a while: with what the analyses say
 * known already, and with nothing known. Microseconds for the boat.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class WarmRules {

	private static final LocalDate DAY = LocalDate.of(2026, 1, 1);

	private List<LoadedRule> rules;
	private Boat boat;
	private Figures known;

	/** Builds the boat, and lets every rule ask for its figures once. */
	@Setup
	public void build() {
		Checker checker = Checker.create();
		rules = checker.rules().rules().stream().filter(rule -> rule.rule() instanceof BoatRule).toList();
		boat = checker.boats(CheckRequest.ofAll(Snapshot.of(GeneratedProject.of(GeneratedProject.DEVICES_PER_NETWORK)), DAY)).boats().get(0);
		known = new Figures(boat);
		findings(known);
	}

	private int findings(Figures figures) {
		int findings = 0;
		for (LoadedRule rule : rules) {
			findings += ((BoatRule) rule.rule()).check(new BoatUnderCheck(figures, RuleInForce.asShipped(rule.description()), HouseDemands.NONE)).size();
		}
		return findings;
	}

	/** The rules alone. */
	@Benchmark
	public int onKnownFigures() {
		return findings(known);
	}

	/** The rules with all analyses that they ask for. */
	@Benchmark
	public int withAllAnalyses() {
		return findings(new Figures(boat));
	}
}
