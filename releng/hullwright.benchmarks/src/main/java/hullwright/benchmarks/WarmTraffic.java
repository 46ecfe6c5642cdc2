/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.analysis.traffic.BusAssumptions;
import hullwright.analysis.traffic.BusLoad;
import hullwright.analysis.traffic.NetworkTraffic;
import hullwright.analysis.traffic.Queueing;
import hullwright.analysis.traffic.ResponseTimes;
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
 * How long the worst-case response times of a network take in a warm process.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class WarmTraffic {

	/** How many messages the network has. */
	@Param({ "20", "60", "120", "500" })
	public int messages;

	private NetworkTraffic traffic;

	/** Generates the network and refuses to measure another number of messages. */
	@Setup
	public void generate() {
		traffic = NetworkTraffic.of(GeneratedData.ofMessages(messages).networks().get(0));
		if (traffic.messages().size() != messages) {
			throw new IllegalStateException(traffic.messages().size() + " messages instead of " + messages + "; left out: " + traffic.leftOut());
		}
	}

	/** By the order of priorities. */
	@Benchmark
	public Object responseTimes() {
		return ResponseTimes.of(traffic, BusAssumptions.STANDARD);
	}

	/** Where controllers send what they got first. */
	@Benchmark
	public Object firstInFirstOut() {
		return ResponseTimes.of(traffic, BusAssumptions.STANDARD.withQueues(Queueing.FIRST_IN_FIRST_OUT));
	}

	/** The mean load and the busiest second. */
	@Benchmark
	public Object load() {
		return BusLoad.of(traffic, BusLoad.NMEA_2000);
	}
}
