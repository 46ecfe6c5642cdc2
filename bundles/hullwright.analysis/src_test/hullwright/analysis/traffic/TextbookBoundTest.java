/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

/**
 * The bounds against the textbook's example and against two other ways of finding the same: a walk through the critical instant,
 * and every combination of first moments on a simulated bus.
 */
class TextbookBoundTest {

	/** 125 kbit/s, 11-bit identifiers, 7 bytes of data: 125 bits at most, 1 ms. In half bits, so that 2.5 ms is a whole number. */
	private static final int MILLISECOND = 250;

	/** Messages of 1 ms, every 2.5, 3.5 and 3.5 ms. */
	private static final List<FrameStream> EXAMPLE = List.of(
			Streams.stream("a", 1, 1, MILLISECOND, 5 * MILLISECOND / 2, 0),
			Streams.stream("b", 2, 1, MILLISECOND, 7 * MILLISECOND / 2, 0),
			Streams.stream("c", 3, 1, MILLISECOND, 7 * MILLISECOND / 2, 0));

	/**
	 * The example of Davis, Burns, Bril, Lukkien 2007 (numbers from memory), where C is to be through in 3.25 ms. The older
	 * analysis looks at its first instance only, finds 3 ms and calls it schedulable; the second takes 3.5 ms.
	 */
	@Test
	void theSecondInstanceOfTheExampleIsLate() {
		List<Delay> found = WorstCaseDelays.of(EXAMPLE, Streams.PLAIN);
		assertEquals(2 * MILLISECOND, Streams.bits(found.get(0)));
		assertEquals(3 * MILLISECOND, Streams.bits(found.get(1)));
		Delay.Bounded c = (Delay.Bounded) found.get(2);
		assertEquals(7 * MILLISECOND / 2, c.bits());
		assertEquals(1, c.instance());
	}

	/** A and B are blocked by C, which has started a moment before; C itself meets its bound. */
	@Test
	void theBoundsOfTheExampleAreReached() {
		List<BusSimulation.Arrival> together = new ArrayList<>();
		List<BusSimulation.Arrival> afterC = new ArrayList<>();
		for (int stream = 0; stream < 3; stream++) {
			for (int instance = 0; instance < 4; instance++) {
				long due = instance * EXAMPLE.get(stream).interval();
				together.add(new BusSimulation.Arrival(stream, due, due));
				afterC.add(new BusSimulation.Arrival(stream, due + (stream == 2 ? 0 : 1), due + (stream == 2 ? 0 : 1)));
			}
		}
		BusSimulation bus = new BusSimulation(EXAMPLE, new int[] { 1, 2, 3 }, 0, 1);
		assertEquals(7 * MILLISECOND / 2, bus.longestDelays(together)[2]);
		assertEquals(2 * MILLISECOND - 1, bus.longestDelays(afterC)[0]);
		assertEquals(3 * MILLISECOND - 1, bus.longestDelays(afterC)[1]);
	}

	@Test
	void aWalkThroughTheCriticalInstantFindsTheSame() {
		Random random = new Random(7);
		int bounds = 0;
		for (int bus = 0; bus < 1000; bus++) {
			List<FrameStream> streams = Streams.random(random, false);
			List<Delay> found = WorstCaseDelays.of(streams, Streams.PLAIN);
			for (int i = 0; i < streams.size(); i++) {
				if (found.get(i) instanceof Delay.Bounded bounded) {
					long walked = CriticalInstant.longestDelay(streams.get(i), preceding(streams, i), blocking(streams, i), 400_000);
					assertEquals(walked, bounded.bits(), streams.get(i) + " in " + streams);
					bounds++;
				}
			}
		}
		assertTrue(bounds > 2500, bounds + " bounds");
	}

	private static List<FrameStream> preceding(List<FrameStream> streams, int one) {
		List<FrameStream> preceding = new ArrayList<>(streams);
		preceding.remove(one);
		preceding.removeIf(other -> other.identifiers().first() > streams.get(one).identifiers().first());
		return preceding;
	}

	private static int blocking(List<FrameStream> streams, int one) {
		return streams.stream().filter(other -> other.identifiers().first() > streams.get(one).identifiers().first())
				.mapToInt(FrameStream::frameBits).max().orElse(0);
	}

	/**
	 * Three streams with a few bits each, started at every combination of moments: the longest delay that is ever seen is that of
	 * the walk with a blocking frame that has started one bit earlier, and the bound is at most what a whole frame makes of it.
	 */
	@Test
	void everyCombinationOfMomentsFindsTheWorst() {
		Random random = new Random(11);
		int bounds = 0;
		for (int bus = 0; bus < 100; bus++) {
			List<FrameStream> streams = new ArrayList<>();
			for (int i = 0; i < 3; i++) {
				int frames = 1 + random.nextInt(4) / 3;
				streams.add(Streams.stream("device" + i, i, frames, 1 + random.nextInt(3), 5 + random.nextInt(9), 0));
			}
			double load = streams.stream().mapToDouble(stream -> stream.burstBits() / (double) stream.interval()).sum();
			if (load >= 1) {
				continue;
			}
			long[] seen = everyCombination(streams);
			List<Delay> found = WorstCaseDelays.of(streams, Streams.PLAIN);
			for (int i = 0; i < 3; i++) {
				int blocking = blocking(streams, i);
				long reachable = CriticalInstant.longestDelay(streams.get(i), preceding(streams, i), Math.max(0, blocking - 1), 400_000);
				assertEquals(reachable, seen[i], i + " of " + streams);
				assertTrue(seen[i] <= Streams.bits(found.get(i)), i + " of " + streams);
				assertTrue(blocking > 0 || seen[i] == Streams.bits(found.get(i)), i + " of " + streams);
				bounds++;
			}
		}
		assertTrue(bounds > 150, bounds + " bounds");
	}

	/** Two of three streams from one device that sends in order: no combination of moments goes beyond the bound, and many reach it. */
	@Test
	void noCombinationOfMomentsGoesBeyondTheBoundOfAQueue() {
		Random random = new Random(12);
		int bounds = 0;
		int reached = 0;
		for (int bus = 0; bus < 100; bus++) {
			List<FrameStream> streams = new ArrayList<>();
			for (int i = 0; i < 3; i++) {
				FrameStream stream = Streams.stream(i == bus % 3 ? "alone" : "queue", i, 1 + random.nextInt(4) / 3, 1 + random.nextInt(3),
						5 + random.nextInt(9), 0);
				streams.add(i == bus % 3 ? stream : Streams.queued(stream, Queueing.FIRST_IN_FIRST_OUT));
			}
			List<Delay> found = WorstCaseDelays.of(streams, Streams.PLAIN);
			if (found.stream().noneMatch(Delay.Bounded.class::isInstance)) {
				continue;
			}
			long[] seen = everyCombination(streams);
			for (int i = 0; i < 3; i++) {
				assertTrue(seen[i] <= Streams.bits(found.get(i)), i + " of " + streams);
				if (found.get(i) instanceof Delay.Bounded bounded) {
					bounds++;
					reached += seen[i] >= bounded.bits() - 1 ? 1 : 0;
				}
			}
		}
		assertTrue(bounds > 120 && reached > bounds / 2, reached + " of " + bounds + " reached");
	}

	private static long[] everyCombination(List<FrameStream> streams) {
		BusSimulation simulation = new BusSimulation(streams, new int[] { 1, 2, 3 }, 0, 1);
		long[] longest = new long[3];
		for (long a = 0; a < streams.get(0).interval(); a++) {
			for (long b = 0; b < streams.get(1).interval(); b++) {
				for (long c = 0; c < streams.get(2).interval(); c++) {
					long[] seen = simulation.longestDelays(from(streams, a, b, c));
					for (int i = 0; i < 3; i++) {
						longest[i] = Math.max(longest[i], seen[i]);
					}
				}
			}
		}
		return longest;
	}

	private static List<BusSimulation.Arrival> from(List<FrameStream> streams, long... first) {
		List<BusSimulation.Arrival> arrivals = new ArrayList<>();
		for (int i = 0; i < 3; i++) {
			for (long due = first[i]; due < 50; due += streams.get(i).interval()) {
				arrivals.add(new BusSimulation.Arrival(i, due, due));
			}
		}
		return arrivals;
	}
}
