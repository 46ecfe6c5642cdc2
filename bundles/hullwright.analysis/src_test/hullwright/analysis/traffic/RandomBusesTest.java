/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The bounds against a simulation that knows nothing of them: no message takes longer, on any of many random buses with random
 * addresses, moments, jitter and errors, started at random or as badly as we know.
 */
class RandomBusesTest {

	private static final int INSTANCES = 8;

	/** In each row: how many buses, whether some devices send in order, the errors; how often a bound must be reached at least. */
	@ParameterizedTest
	@CsvSource({ "6500, false, 0, 1, 0.35", "3000, true, 0, 1, 0.2", "600, false, 2, 2500, 0.01", "600, true, 1, 1200, 0.01" })
	void noMessageTakesLongerThanItsBound(int buses, boolean someInOrder, int errorsAtOnce, long errorsApart, double reachedAtLeast) {
		Random random = new Random(buses);
		BusTerms terms = new BusTerms(0, errorsAtOnce, errorsApart, 100_000);
		int bounds = 0;
		int reached = 0;
		for (int bus = 0; bus < buses; bus++) {
			List<FrameStream> streams = Streams.random(random, someInOrder);
			List<Delay> delays = WorstCaseDelays.of(streams, terms);
			BusSimulation simulation = new BusSimulation(streams, addresses(streams, random), errorsAtOnce, errorsApart);
			long[] longest = new long[streams.size()];
			for (int start = 0; start < 3; start++) {
				long[] seen = simulation.longestDelays(start == 0 ? atRandom(streams, random) : together(streams, start == 1, random));
				for (int i = 0; i < seen.length; i++) {
					longest[i] = Math.max(longest[i], seen[i]);
				}
			}
			for (int i = 0; i < longest.length; i++) {
				if (delays.get(i) instanceof Delay.Bounded bounded) {
					assertTrue(longest[i] <= bounded.bits(), "bus " + bus + ": " + longest[i] + " > " + bounded + " of " + i + " in " + streams);
					bounds++;
					// a frame that blocks has started at least a bit earlier
					reached += longest[i] >= bounded.bits() - 1 ? 1 : 0;
				}
			}
		}
		double rate = reached / (double) bounds;
		assertTrue(bounds > 2 * buses, bounds + " bounds");
		assertTrue(rate > reachedAtLeast, "bounds reached: " + rate);
	}

	private static int[] addresses(List<FrameStream> streams, Random random) {
		List<Integer> free = new ArrayList<>();
		for (int i = 0; i < 252; i++) {
			free.add(i);
		}
		Collections.shuffle(free, random);
		Map<String, Integer> claimed = new HashMap<>();
		return streams.stream().mapToInt(stream -> claimed.computeIfAbsent(stream.sender(), sender -> free.get(claimed.size()))).toArray();
	}

	private static List<BusSimulation.Arrival> atRandom(List<FrameStream> streams, Random random) {
		List<BusSimulation.Arrival> arrivals = new ArrayList<>();
		for (int i = 0; i < streams.size(); i++) {
			FrameStream stream = streams.get(i);
			long due = (long) (random.nextDouble() * stream.interval());
			long queued = 0;
			for (int instance = 0; instance < INSTANCES; instance++) {
				// no device sends two messages of a kind the wrong way round
				queued = Math.max(queued, due + (long) (random.nextDouble() * (stream.jitter() + 1)));
				arrivals.add(new BusSimulation.Arrival(i, due, queued));
				due += stream.interval() + (random.nextInt(4) == 0 ? random.nextInt(200) : 0);
			}
		}
		return arrivals;
	}

	/** One stream starts a bit before all others, which had been waiting for as long as their jitter allows. */
	private static List<BusSimulation.Arrival> together(List<FrameStream> streams, boolean longestFirst, Random random) {
		int early = random.nextInt(streams.size());
		for (int i = 0; longestFirst && i < streams.size(); i++) {
			boolean lessUrgent = streams.get(i).identifiers().first() > streams.get(early).identifiers().first();
			early = lessUrgent ? i : early;
		}
		List<BusSimulation.Arrival> arrivals = new ArrayList<>();
		for (int i = 0; i < streams.size(); i++) {
			FrameStream stream = streams.get(i);
			long start = i == early ? 0 : 1;
			for (int instance = 0; instance < INSTANCES; instance++) {
				long due = start - stream.jitter() + instance * stream.interval();
				arrivals.add(new BusSimulation.Arrival(i, due, Math.max(start, due)));
			}
		}
		return arrivals;
	}
}
