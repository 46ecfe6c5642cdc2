/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.Figures;
import hullwright.analysis.traffic.BusFigures;
import hullwright.analysis.traffic.BusMessage;
import hullwright.analysis.traffic.MessageResponse;
import hullwright.analysis.traffic.ResponseTime;
import hullwright.network.Boat;
import hullwright.testkit.BoatText;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What bridges and gateways bring into a network loads it like any other message, and comes as irregularly as it was heard: its
 * jitter is its response time on the other network (holistic analysis of distributed systems, Tindell and Clark 1994, from memory).
 */
class BridgedTrafficTest {

	private static final String BOAT = """
			import "standard:messages"
			catalog Kit "Invented" {
			  family f "Invented" { vendor }
			  terminator end { end f male; 120 ohm }
			  tee block { backbone f male, f female; ports 1..9 : f female }
			  cable wire { ends f male, f female }
			  device engine { port bus : f male; sends 127488 every 100 ms; sends 127489 every 500 ms }
			  device compass { port bus : f male; sends 127250 every 100 ms }
			  device display { port bus : f male; wants 127488 }
			  device link { port a : f male; port b : f male; isolated a from b; passes settable }
			}
			series Skerry "Invented" {
			  device bridge : link { passes %s }
			  network engines { backbone of wire { terminator l : end tee t : block terminator r : end }
			    drop t.1 to motor : engine
			    drop t.2 to bridge.a
			  }
			  network instruments { backbone of wire { terminator l : end tee t : block terminator r : end }
			    drop t.1 to heading : compass
			    drop t.2 to dial : display
			    drop t.3 to bridge.b
			  }
			}
			""";

	private static List<BusFigures> buses(String passes) {
		Boat boat = BoatText.boat(BOAT.formatted(passes));
		return new Figures(boat).buses();
	}

	private static MessageResponse response(BusFigures bus, int pgn) {
		return bus.responses().messages().stream().filter(each -> each.message().pgn().number() == pgn).findFirst().orElseThrow();
	}

	private static double worst(MessageResponse response) {
		return ((ResponseTime.Bounded) response.time()).worst().seconds();
	}

	@Test
	void whatIsPassedOnLoadsTheOtherNetwork() {
		double alone = buses("129025 from a to b").get(1).load().total().framesPerSecond();
		double with = buses("127488 and 127489 from a to b").get(1).load().total().framesPerSecond();
		assertEquals(10, alone, 1e-9);
		// 127489 is a fast packet of 26 bytes: four frames, twice a second
		assertEquals(10 + 10 + 4 * 2, with, 1e-9);
	}

	@Test
	void itComesAsIrregularlyAsItWasHeard() {
		List<BusFigures> buses = buses("127488 from a to b");
		MessageResponse heard = response(buses.get(0), 127488);
		MessageResponse passed = response(buses.get(1), 127488);
		BusMessage message = passed.message();
		assertEquals("Skerry.bridge", message.sender());
		assertEquals(worst(heard), message.jitter().seconds(), 1e-9);
		assertTrue(worst(passed) > worst(heard), "it may come late, and then it waits on the other network too");
	}

	/** What is passed both ways depends on each other's response times, and settles. */
	@Test
	void bothWaysSettle() {
		List<BusFigures> buses = buses("all");
		assertTrue(buses.stream().flatMap(each -> each.responses().messages().stream()).allMatch(each -> each.time() instanceof ResponseTime.Bounded));
		double engine = worst(response(buses.get(0), 127488));
		assertEquals(engine, response(buses.get(1), 127488).message().jitter().seconds(), 1e-6);
		assertEquals(worst(response(buses.get(1), 127250)), response(buses.get(0), 127250).message().jitter().seconds(), 1e-6);
	}

	/** With a second bridge in parallel messages go round for ever, so that nothing bounds how late they come. */
	@Test
	void whatGoesRoundHasNoBound() {
		Boat boat = BoatText.boat(BOAT.formatted("all").replace("network engines", "device second : link { passes all }\n  network engines")
				.replace("drop t.2 to bridge.a", "drop t.2 to bridge.a\n drop t.4 to second.a").replace("drop t.3 to bridge.b", "drop t.3 to bridge.b\n drop t.4 to second.b"));
		List<BusFigures> buses = new Figures(boat).buses();
		assertTrue(buses.stream().flatMap(each -> each.responses().messages().stream()).filter(each -> each.message().sender().equals("Skerry.second"))
				.allMatch(each -> each.time() instanceof ResponseTime.Unbounded));
	}

	/** From a network that is full messages come without any bound, and so they go on. */
	@Test
	void whatComesFromAFullNetworkHasNoBound() {
		Boat boat = BoatText.boat(BOAT.formatted("127489 from a to b").replace("sends 127488 every 100 ms", "sends 127488 every 0.5 ms"));
		List<BusFigures> buses = new Figures(boat).buses();
		assertTrue(response(buses.get(0), 127489).time() instanceof ResponseTime.Unbounded);
		assertTrue(response(buses.get(1), 127489).time() instanceof ResponseTime.Unbounded);
		assertTrue(response(buses.get(1), 127250).time() instanceof ResponseTime.Bounded, "a more urgent message waits for one frame only");
	}

	/** A sentence waits for its line: two of 25 and 21 characters at 480 a second, so HDG comes by 46 / 480 s late at most. */
	@Test
	void whatIsMadeOfSentencesComesAsLateAsTheLineMayBe() {
		Boat boat = BoatText.boat(BOAT.formatted("127488 from a to b")
				.replace("device display", "device old { line out : talker, differential, 4800 baud; sends HDG every 200 ms by out; sends HDM every 1 s by out }\n"
						+ "device gate { port bus : f male; line lower : listener, isolated, 4800 baud; turns HDG to 127250 as magnetic by lower }\n  device display")
				.replace("drop t.3 to bridge.b", "drop t.3 to bridge.b\n drop t.4 to gate : gate")
				.replace("device bridge : link", "device old : old\n serial heading at 4800 baud { from old.out; to instruments.gate.lower }\n device bridge : link"));
		BusFigures bus = new Figures(boat).buses().get(1);
		MessageResponse made = bus.responses().messages().stream().filter(each -> each.message().sender().endsWith("gate")).findFirst().orElseThrow();
		assertEquals(46 / 480.0, made.message().jitter().seconds(), 1e-6);
	}
}
