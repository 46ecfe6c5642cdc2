/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

/**
 * Devices that send in the order in which messages came, by hand with the formula of Davis, Kollmann, Pollex, Slomka 2011 (from
 * memory): {@code w = B + ΣC - C + Σ⌈(w + J + f + τ)/T⌉·C}, and {@code w + C} at most.
 */
class FirstInFirstOutTest {

	private static FrameStream inOrder(int identifier, long interval) {
		return Streams.queued(Streams.stream("display", identifier, 1, 160, interval, 0), Queueing.FIRST_IN_FIRST_OUT);
	}

	/** B = 160, the others of the queue 2 · 160, the more urgent one 160 once: 640 bits before the last frame of 160. */
	@Test
	void allOfAQueueWaitAsLongAsItsLeastUrgent() {
		List<FrameStream> streams = List.of(inOrder(1, 25_000), inOrder(5, 25_000), inOrder(6, 62_500),
				Streams.stream("compass", 2, 1, 160, 25_000, 0), Streams.stream("tank", 7, 1, 160, 625_000, 0));
		List<Delay> found = WorstCaseDelays.of(streams, Streams.PLAIN);
		assertEquals(List.of(800L, 800L, 800L), found.subList(0, 3).stream().map(Streams::bits).toList());
	}

	/**
	 * B = 0, the other two of the queue 2 · 160, the compass once: a message of the display waits for 480 bits until it is the
	 * oldest and goes. So the 1, every 600 bits, seems to the compass to come with a jitter of 480: ⌈(w + 480 + 1)/600⌉ = 2 of it,
	 * and a frame that blocks, go before the compass.
	 */
	@Test
	void waitingInAQueueIsJitterForOthers() {
		List<FrameStream> streams = List.of(inOrder(1, 600), inOrder(5, 250_000), inOrder(6, 250_000),
				Streams.stream("compass", 2, 1, 160, 25_000, 0));
		List<Delay> found = WorstCaseDelays.of(streams, Streams.PLAIN);
		assertEquals(2 * 160 + 160 + 160, Streams.bits(found.get(0)));
		assertEquals(160 + 2 * 160 + 160, Streams.bits(found.get(3)));
	}

	@Test
	void oneMessageInAQueueIsAsGoodAsByPriority() {
		FrameStream alone = Streams.stream("depth", 3, 1, 160, 25_000, 0);
		List<FrameStream> others = List.of(Streams.stream("compass", 2, 1, 160, 25_000, 0), Streams.stream("gps", 6, 20, 160, 250_000, 0));
		List<FrameStream> byPriority = List.of(alone, others.get(0), others.get(1));
		List<FrameStream> inOrder = List.of(Streams.queued(alone, Queueing.FIRST_IN_FIRST_OUT), others.get(0), others.get(1));
		assertEquals(Streams.bits(WorstCaseDelays.of(byPriority, Streams.PLAIN).get(0)),
				Streams.bits(WorstCaseDelays.of(inOrder, Streams.PLAIN).get(0)));
	}

	/** A queue that asks for more than is left of the bus keeps its more urgent messages back without end. */
	@Test
	void aQueueWithoutABoundLeavesOthersWithoutOne() {
		List<FrameStream> streams = List.of(inOrder(1, 1_000), inOrder(6, 170), Streams.stream("compass", 2, 1, 160, 25_000, 0),
				Streams.stream("rudder", 0, 1, 160, 25_000, 0));
		List<Delay> found = WorstCaseDelays.of(streams, Streams.PLAIN);
		assertEquals(new Delay.Unbounded(ResponseTime.Reason.OVERLOADED), found.get(0));
		assertEquals(new Delay.Unbounded(ResponseTime.Reason.OVERLOADED), found.get(1));
		assertEquals(new Delay.Unbounded(ResponseTime.Reason.QUEUE_WITHOUT_BOUND), found.get(2));
		assertEquals(320, Streams.bits(found.get(3)));
	}
}
