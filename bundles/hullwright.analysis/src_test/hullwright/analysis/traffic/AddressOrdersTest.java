/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

/**
 * Addresses are claimed when the network starts: a bound holds for each order of them and is the worst of all orders.
 */
class AddressOrdersTest {

	@Test
	void aBoundIsTheWorstOverAllOrdersOfAddresses() {
		Random random = new Random(6);
		int worse = 0;
		for (int bus = 0; bus < 500; bus++) {
			List<FrameStream> streams = Streams.random(random, false);
			List<Delay> open = WorstCaseDelays.of(streams, Streams.PLAIN);
			List<String> senders = streams.stream().map(FrameStream::sender).distinct().toList();
			long[] worst = new long[streams.size()];
			long[] best = new long[streams.size()];
			Arrays.fill(best, Long.MAX_VALUE);
			for (List<String> order : orders(senders)) {
				List<Delay> claimed = WorstCaseDelays.of(claimed(streams, order), Streams.PLAIN);
				for (int i = 0; i < worst.length; i++) {
					worst[i] = Math.max(worst[i], Streams.bits(claimed.get(i)));
					best[i] = Math.min(best[i], Streams.bits(claimed.get(i)));
				}
			}
			for (int i = 0; i < worst.length; i++) {
				assertEquals(worst[i], Streams.bits(open.get(i)), i + " of " + streams);
				worse += worst[i] > best[i] ? 1 : 0;
			}
		}
		assertTrue(worse > 300, "addresses matter for " + worse);
	}

	@Test
	void aBoundHoldsForEachOrderAlsoWhereSomeDevicesSendInOrder() {
		Random random = new Random(8);
		for (int bus = 0; bus < 150; bus++) {
			List<FrameStream> streams = Streams.random(random, true);
			List<Delay> open = WorstCaseDelays.of(streams, Streams.PLAIN);
			for (List<String> order : orders(streams.stream().map(FrameStream::sender).distinct().toList())) {
				List<Delay> claimed = WorstCaseDelays.of(claimed(streams, order), Streams.PLAIN);
				for (int i = 0; i < streams.size(); i++) {
					assertTrue(Streams.bits(claimed.get(i)) <= Streams.bits(open.get(i)), i + " of " + streams + " in order " + order);
				}
			}
		}
	}

	/** The streams with whole identifiers: no two devices share one. */
	private static List<FrameStream> claimed(List<FrameStream> streams, List<String> order) {
		return streams.stream()
				.map(stream -> Streams.identified(stream, stream.identifiers().first() << 8 | order.indexOf(stream.sender()))).toList();
	}

	private static List<List<String>> orders(List<String> senders) {
		if (senders.isEmpty()) {
			return List.of(List.of());
		}
		List<List<String>> orders = new ArrayList<>();
		for (String first : senders) {
			List<String> others = new ArrayList<>(senders);
			others.remove(first);
			for (List<String> rest : orders(others)) {
				List<String> order = new ArrayList<>(List.of(first));
				order.addAll(rest);
				orders.add(order);
			}
		}
		return orders;
	}
}
