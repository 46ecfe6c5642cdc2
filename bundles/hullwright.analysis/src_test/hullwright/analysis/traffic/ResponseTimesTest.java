/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static hullwright.analysis.traffic.Devices.DEPTH;
import static hullwright.analysis.traffic.Devices.HEADING;
import static hullwright.analysis.traffic.Devices.RUDDER;
import static hullwright.analysis.traffic.Devices.SATELLITES;
import static hullwright.analysis.traffic.Devices.device;
import static hullwright.analysis.traffic.Devices.every;
import static hullwright.analysis.traffic.Devices.onEvent;
import static hullwright.analysis.traffic.Devices.pgn;
import static hullwright.analysis.traffic.Devices.sends;
import static hullwright.analysis.traffic.Devices.traffic;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.data.Pgn;
import hullwright.network.data.SentMessage;
import hullwright.quantity.BitRate;
import hullwright.quantity.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Response times on small networks, by hand: a full frame takes 160 bits at most, 0.64 ms.
 */
class ResponseTimesTest {

	private static final double FRAME = 0.00064;
	private static final double ROUNDING = 1e-9;

	private static final NetworkTraffic SMALL_BOAT = traffic(device("compass", sends(HEADING, every(0.1))), device("rudder", sends(RUDDER, every(0.1))),
			device("gnss", sends(SATELLITES, every(1))), device("depth", sends(DEPTH, every(1))));

	private static double seconds(ResponseTimes times, int message) {
		return assertInstanceOf(ResponseTime.Bounded.class, times.messages().get(message).time()).worst().seconds();
	}

	private static ResponseTime.Reason reason(MessageResponse response) {
		return assertInstanceOf(ResponseTime.Unbounded.class, response.time()).reason();
	}

	/** Rudder goes before heading, since 127245 is lower, then depth, then 20 frames of satellites; each may find a frame started. */
	@Test
	void aSmallBoat() {
		ResponseTimes times = ResponseTimes.of(SMALL_BOAT, BusAssumptions.STANDARD);
		assertEquals(3 * FRAME, seconds(times, 0), ROUNDING);
		assertEquals(2 * FRAME, seconds(times, 1), ROUNDING);
		assertEquals((1 + 3 + 20) * FRAME, seconds(times, 2), ROUNDING);
		assertEquals(4 * FRAME, seconds(times, 3), ROUNDING);
		assertEquals(0.1 - 3 * FRAME, times.messages().get(0).margin().orElseThrow().seconds(), ROUNDING);
		assertTrue(times.messages().stream().allMatch(MessageResponse::isInTime));
	}

	/** Two compasses: whoever claims the higher address waits for the other. */
	@Test
	void alikeDevicesMayEachBeTheOneThatWaits() {
		ResponseTimes times = ResponseTimes.of(traffic(device("one", sends(HEADING, every(0.1))), device("other", sends(HEADING, every(0.1)))),
				BusAssumptions.STANDARD);
		assertEquals(3 * FRAME, seconds(times, 0), ROUNDING);
		assertEquals(3 * FRAME, seconds(times, 1), ROUNDING);
	}

	@Test
	void jitterOfASenderCountsForItselfAndForOthers() {
		ResponseTimes times = ResponseTimes.of(SMALL_BOAT, BusAssumptions.STANDARD.withJitter(new Duration(0.1)));
		assertEquals(0.1 + 2 * FRAME, seconds(times, 1), ROUNDING);
		// 101 ms late, rudder may come twice at once
		assertEquals(0.1 + 4 * FRAME, seconds(times, 0), ROUNDING);
		assertFalse(times.messages().get(0).isInTime());
		assertTrue(times.messages().get(0).margin().orElseThrow().seconds() < 0);
	}

	/** One error costs 31 bits and the longest frame that is sent again. */
	@Test
	void errorsOfTransmission() {
		ResponseTimes times = ResponseTimes.of(SMALL_BOAT, BusAssumptions.STANDARD.withErrors(new BusErrors(1, new Duration(1))));
		assertEquals(3 * FRAME + 31 / 250_000.0, seconds(times, 1), ROUNDING);
	}

	/** One error in each 10 ms: the 24 frames until satellites are through take more than that, so two errors of 0.764 ms fall within. */
	@Test
	void errorsComeAgain() {
		ResponseTimes times = ResponseTimes.of(SMALL_BOAT, BusAssumptions.STANDARD.withErrors(new BusErrors(1, new Duration(0.010))));
		assertEquals(24 * FRAME + 2 * (FRAME + 31 / 250_000.0), seconds(times, 2), ROUNDING);
	}

	/** The rest of the queue goes before: 20 frames of satellites. */
	@Test
	void devicesThatSendInOrder() {
		NetworkTraffic traffic = traffic(device("gnss", sends(HEADING, every(0.1)), sends(SATELLITES, every(1))));
		assertEquals(2 * FRAME, seconds(ResponseTimes.of(traffic, BusAssumptions.STANDARD), 0), ROUNDING);
		assertEquals(22 * FRAME, seconds(ResponseTimes.of(traffic, BusAssumptions.STANDARD.withQueues(Queueing.FIRST_IN_FIRST_OUT)), 0), ROUNDING);
	}

	/** A slower bus: 160 bits take 1.28 ms at 125 kbit/s. */
	@Test
	void theRateOfTheBusCounts() {
		BusAssumptions slow = new BusAssumptions(new BitRate(125_000), new Duration(0), Queueing.BY_PRIORITY, Map.of(), Optional.empty(), false,
				new Duration(10));
		assertEquals(0.00128, seconds(ResponseTimes.of(traffic(device("compass", sends(HEADING, every(0.1)))), slow), 0), ROUNDING);
	}

	/** Rudder and heading ask for three quarters of the bus, depth for as much again: only depth has no bound. */
	@Test
	void onlyWhatIsLessUrgentSuffersFromTooMuch() {
		ResponseTimes times = ResponseTimes.of(traffic(device("compass", sends(HEADING, every(4 * FRAME))), device("rudder", sends(RUDDER, every(2 * FRAME))),
				device("depth", sends(DEPTH, every(FRAME)))), BusAssumptions.STANDARD);
		assertTrue(seconds(times, 0) > 0 && seconds(times, 1) > 0);
		assertEquals(ResponseTime.Reason.OVERLOADED, reason(times.messages().get(2)));
		assertEquals(Optional.empty(), times.messages().get(2).margin());
		assertFalse(times.messages().get(2).isInTime());
	}

	@Test
	void aFullBusHasNoBound() {
		ResponseTimes times = ResponseTimes.of(traffic(device("depth", sends(DEPTH, every(FRAME)))), BusAssumptions.STANDARD);
		assertEquals(ResponseTime.Reason.OVERLOADED, reason(times.messages().get(0)));
	}

	/** Depth leaves one of 161 bits; four devices that send 32 frames each, if rarely, need 4 · 32 · 160 · 161 of them: 13 seconds. */
	@Test
	void aBusThatIsNearlyFullIsBusyBeyondTheHorizon() {
		SentMessage longest = sends(pgn(129540, Pgn.Transport.FAST, 223, 6), every(1000));
		ResponseTimes times = ResponseTimes.of(traffic(device("depth", sends(DEPTH, every(161 / 250_000.0))), device("a", longest), device("b", longest),
				device("c", longest), device("d", longest)), BusAssumptions.STANDARD);
		assertEquals(2 * FRAME, seconds(times, 0), ROUNDING);
		assertEquals(ResponseTime.Reason.BEYOND_HORIZON, reason(times.messages().get(1)));
	}

	@ParameterizedTest
	@ValueSource(doubles = { 1e-6, 1e-3, 1, 1e9, 1e300 })
	void anyIntervalHasAnAnswer(double interval) {
		ResponseTimes times = ResponseTimes.of(traffic(device("odd", sends(HEADING, every(interval)), sends(DEPTH, onEvent(interval)))),
				BusAssumptions.STANDARD.withJitter(new Duration(interval)));
		for (MessageResponse each : times.messages()) {
			assertTrue(each.time() instanceof ResponseTime.Unbounded || each.margin().orElseThrow().seconds() <= interval);
		}
		assertEquals(2, times.messages().size());
	}

	@Test
	void jitterBeyondTheHorizonLeavesNoBound() {
		NetworkTraffic traffic = traffic(device("rudder", sends(RUDDER, every(1))), device("depth", sends(DEPTH, every(1))));
		NetworkTraffic late = new NetworkTraffic("bus", traffic.nodes(),
				List.of(traffic.messages().get(0).withJitter(new Duration(1e300)), traffic.messages().get(1)), List.of());
		ResponseTimes times = ResponseTimes.of(late, BusAssumptions.STANDARD);
		assertEquals(ResponseTime.Reason.BEYOND_HORIZON, reason(times.messages().get(0)));
		assertEquals(ResponseTime.Reason.BEYOND_HORIZON, reason(times.messages().get(1)));
	}

	@Test
	void fiveHundredMessages() {
		List<SentMessage> many = new ArrayList<>();
		for (int i = 0; i < 500; i++) {
			many.add(sends(pgn(127_233 + i, i % 5 == 0 ? Pgn.Transport.FAST : Pgn.Transport.SINGLE, 8, i % 8), every(0.5 + i % 7)));
		}
		ResponseTimes times = ResponseTimes.of(traffic(device("all", many.toArray(SentMessage[]::new))), BusAssumptions.STANDARD);
		assertEquals(500, times.messages().size());
		assertTrue(times.messages().stream().allMatch(each -> each.time() instanceof ResponseTime.Bounded));
		assertEquals(List.of(), ResponseTimes.of(traffic(), BusAssumptions.STANDARD).messages());
	}

	@Test
	void assumptionsThatCannotBe() {
		assertThrows(IllegalArgumentException.class, () -> BusAssumptions.STANDARD.withJitter(new Duration(-1)));
		assertThrows(IllegalArgumentException.class, () -> BusAssumptions.STANDARD.withJitter(new Duration(Double.NaN)));
		assertThrows(IllegalArgumentException.class, () -> new BusErrors(0, new Duration(1)));
		assertThrows(IllegalArgumentException.class, () -> new BusErrors(1, new Duration(0)));
	}
}
