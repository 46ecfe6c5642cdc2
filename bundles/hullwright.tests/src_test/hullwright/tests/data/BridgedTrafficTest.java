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

	/** With two bridges one behind the other jitter adds up; what goes round grows and is given up, not followed for ever. */
	@Test
	void everyBridgeAddsToTheJitter() {
		List<BusFigures> buses = buses("all");
		assertTrue(buses.stream().flatMap(each -> each.responses().messages().stream()).allMatch(each -> each.time() instanceof ResponseTime.Bounded));
	}
}
