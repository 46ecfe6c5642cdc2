/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import hullwright.analysis.serial.SentenceOnLine;
import hullwright.analysis.serial.SerialLoad;
import hullwright.analysis.serial.Waiting;
import hullwright.quantity.BitRate;
import hullwright.tests.serial.LineSimulation.Telling;

/**
 * The bounds against a simulation that knows nothing of them, on many random sets of sentences: none waits longer at whatever
 * moments they become due, and each waits as long where all become due at once and it comes last.
 */
class WaitingTest {

	private static final int SETS = 12_000;

	private static final double CHARACTERS_A_SECOND = 480;

	@Test
	void nothingWaitsLongerThanItsBoundAndEachMayWaitAsLong() {
		Random random = new Random(4800);
		int bounded = 0;
		for (int set = 0; set < SETS; set++) {
			List<Telling> tellings = random(random);
			Waiting waiting = Waiting.of(SerialLoad.of(sentences(tellings)), new BitRate(4800));
			double share = tellings.stream().mapToDouble(each -> each.length() / (double) each.interval()).sum();
			if (waiting instanceof Waiting.Unbounded) {
				assertTrue(share >= 1 - 1e-9, "no bound for " + tellings);
				continue;
			}
			assertTrue(share < 1, "a bound for " + tellings);
			bounded++;
			compare(tellings, assertInstanceOf(Waiting.Bounded.class, waiting), random);
		}
		assertTrue(bounded > 10_000, bounded + " sets");
	}

	private static void compare(List<Telling> tellings, Waiting.Bounded bound, Random random) {
		LineSimulation anyTime = new LineSimulation(tellings);
		for (int start = 0; start < 2; start++) {
			anyTime.run(tellings.stream().mapToInt(each -> random.nextInt(each.interval())).toArray(), -1, start == 0, 1000, random);
		}
		LineSimulation together = new LineSimulation(tellings);
		for (int last = 0; last < tellings.size(); last++) {
			together.run(new int[tellings.size()], last, true, 1000, random);
		}
		for (int i = 0; i < tellings.size(); i++) {
			double waits = bound.sentences().get(i).waits().seconds() * CHARACTERS_A_SECOND;
			double done = bound.sentences().get(i).done().seconds() * CHARACTERS_A_SECOND;
			assertTrue(anyTime.waited[i] <= waits + 1e-6 && anyTime.took[i] <= done + 1e-6, "sentence " + i + " of " + tellings);
			assertEquals(waits, together.waited[i], 1e-6, "sentence " + i + " of " + tellings);
			assertEquals(done, together.took[i], 1e-6, "sentence " + i + " of " + tellings);
		}
		assertTrue(anyTime.backlog <= bound.backlog());
		assertEquals(bound.backlog(), together.backlog);
		double run = bound.run().map(each -> each.seconds() * CHARACTERS_A_SECOND).orElse(Double.POSITIVE_INFINITY);
		assertTrue(Math.max(anyTime.run, together.run) <= run + 1e-6, "a run of " + tellings);
		if (run < 1000) {
			assertEquals(run, together.run, 1e-6, "a run of " + tellings);
		}
	}

	/** One to six sentences that ask for anything up to a little more than the line carries. */
	private static List<Telling> random(Random random) {
		int count = 1 + random.nextInt(6);
		double share = random.nextDouble() * 1.05;
		List<Telling> tellings = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			int length = 1 + random.nextInt(82);
			double part = share / count * (0.5 + random.nextDouble());
			tellings.add(new Telling(length, Math.max(1, (int) Math.min(1e6, length / part)), random.nextInt(4) > 0));
		}
		return tellings;
	}

	private static List<SentenceOnLine> sentences(List<Telling> tellings) {
		return tellings.stream().map(each -> each.regular() ? SerialText.regular("AAA", each.length(), each.interval() / CHARACTERS_A_SECOND)
				: SerialText.event("AAA", each.length(), each.interval() / CHARACTERS_A_SECOND)).toList();
	}
}
