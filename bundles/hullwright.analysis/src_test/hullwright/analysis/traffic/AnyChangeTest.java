/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/**
 * What must hold between the bounds of a bus and those of the bus changed a little.
 */
class AnyChangeTest {

	private static final int BUSES = 700;

	@Test
	void moreTrafficLowersNoBound() {
		Random random = new Random(3);
		for (int bus = 0; bus < BUSES; bus++) {
			List<FrameStream> streams = Streams.random(random, bus % 3 == 0);
			List<Delay> before = WorstCaseDelays.of(streams, Streams.PLAIN);
			List<FrameStream> more = new ArrayList<>(streams);
			more.add(Streams.random(random, bus % 3 == 0).get(0));
			FrameStream last = more.get(streams.size());
			more.set(streams.size(), Streams.queued(last, queueOf(last.sender(), streams)));
			List<Delay> after = WorstCaseDelays.of(more, Streams.PLAIN);
			noneLower(before, after, streams);
		}
	}

	@Test
	void nothingThatMakesABusWorseLowersABound() {
		Random random = new Random(4);
		for (int bus = 0; bus < BUSES; bus++) {
			List<FrameStream> streams = Streams.random(random, bus % 3 == 0);
			List<Delay> before = WorstCaseDelays.of(streams, Streams.PLAIN);
			noneLower(before, WorstCaseDelays.of(streams, new BusTerms(160, 0, 1, Streams.PLAIN.horizon())), streams);
			noneLower(before, WorstCaseDelays.of(streams, new BusTerms(0, 2, 30_000, Streams.PLAIN.horizon())), streams);
			int one = random.nextInt(streams.size());
			FrameStream changed = streams.get(one);
			List<FrameStream> worse = new ArrayList<>(streams);
			worse.set(one, new FrameStream(changed.sender(), changed.queue(), changed.identifiers(), changed.frames() + random.nextInt(2),
					changed.frameBits() + random.nextInt(20), changed.interval() - random.nextInt(10), changed.jitter() + random.nextInt(100)));
			noneLower(before, WorstCaseDelays.of(worse, Streams.PLAIN), streams);
		}
	}

	@Test
	void theOrderOfDevicesChangesNothing() {
		Random random = new Random(5);
		for (int bus = 0; bus < BUSES; bus++) {
			List<FrameStream> streams = Streams.random(random, bus % 2 == 0);
			List<Integer> order = new ArrayList<>(IntStream.range(0, streams.size()).boxed().toList());
			Collections.shuffle(order, random);
			List<Delay> one = WorstCaseDelays.of(streams, Streams.PLAIN);
			List<Delay> other = WorstCaseDelays.of(order.stream().map(streams::get).toList(), Streams.PLAIN);
			assertEquals(order.stream().map(one::get).toList(), other, streams.toString());
		}
	}

	private static Queueing queueOf(String sender, List<FrameStream> streams) {
		return streams.stream().filter(stream -> stream.sender().equals(sender)).map(FrameStream::queue).findFirst().orElse(Queueing.BY_PRIORITY);
	}

	private static void noneLower(List<Delay> before, List<Delay> after, List<FrameStream> streams) {
		for (int i = 0; i < before.size(); i++) {
			assertTrue(Streams.bits(after.get(i)) >= Streams.bits(before.get(i)), i + " of " + streams);
		}
	}
}
