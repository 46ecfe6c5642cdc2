/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static hullwright.analysis.traffic.Devices.AIS_POSITION;
import static hullwright.analysis.traffic.Devices.DEPTH;
import static hullwright.analysis.traffic.Devices.GNSS_POSITION;
import static hullwright.analysis.traffic.Devices.HEADING;
import static hullwright.analysis.traffic.Devices.SATELLITES;
import static hullwright.analysis.traffic.Devices.device;
import static hullwright.analysis.traffic.Devices.every;
import static hullwright.analysis.traffic.Devices.onEvent;
import static hullwright.analysis.traffic.Devices.pgn;
import static hullwright.analysis.traffic.Devices.sends;
import static hullwright.analysis.traffic.Devices.traffic;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import hullwright.network.data.Pgn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BusLoadTest {

	private static final double ROUNDING = 1e-9;

	private static BusLoad load(NetworkTraffic traffic) {
		return BusLoad.of(traffic, BusLoad.NMEA_2000);
	}

	/** Bytes, interval and percent of the bus at worst: frames by the framing, 160 bits each, at the intervals of the open PGN database. */
	@ParameterizedTest
	@CsvSource({ "SINGLE,8,0.1,0.640", "SINGLE,8,1,0.064", "FAST,26,0.5,0.512", "FAST,43,1,0.448", "FAST,135,1,1.280", "FAST,21,0.25,1.024",
			"FAST,11,1.5,0.0853" })
	void sharesOfSingleMessages(Pgn.Transport transport, int bytes, double seconds, double percent) {
		BusLoad load = load(traffic(device("one", sends(pgn(130000, transport, bytes, 3), every(seconds)))));
		assertEquals(percent / 100, load.regular().worstShareOf(load.bus()), 0.5e-6);
	}

	@Test
	void messagesAndSendersAddUp() {
		BusLoad load = load(traffic(device("compass", sends(HEADING, every(0.1)), sends(DEPTH, every(1))), device("gnss", sends(GNSS_POSITION, every(1)))));
		assertEquals(10 + 1 + 7, load.total().framesPerSecond(), ROUNDING);
		assertEquals(18 * 160, load.total().worst().bitsPerSecond(), ROUNDING);
		assertEquals(18 * 131 * 1.082, load.total().typical().bitsPerSecond(), ROUNDING);
		assertEquals(List.of("compass", "gnss"), load.senders().stream().map(BusLoad.OfSender::sender).toList());
		assertEquals(11, load.senders().get(0).regular().framesPerSecond(), ROUNDING);
		assertEquals(List.of(10.0, 1.0, 7.0), load.messages().stream().map(each -> each.rate().framesPerSecond()).toList());
	}

	@Test
	void whatEventsSendIsAPartOfItsOwn() {
		BusLoad load = load(traffic(device("ais", sends(AIS_POSITION, onEvent(0.1))), device("depth", sends(DEPTH, every(1)))));
		assertEquals(1, load.regular().framesPerSecond(), ROUNDING);
		assertEquals(50, load.events().framesPerSecond(), ROUNDING);
		assertEquals(51, load.total().framesPerSecond(), ROUNDING);
	}

	/** Each regular message as often as it can come in a second, one of each event: 10 + 1 + 7, 5 of AIS, 3 · 20 satellites. */
	@Test
	void theBusiestSecondHasOneOfEachEvent() {
		BusiestSecond second = load(traffic(device("compass", sends(HEADING, every(0.1)), sends(DEPTH, every(1.5))),
				device("gnss", sends(GNSS_POSITION, every(1)), sends(SATELLITES, every(0.4))), device("ais", sends(AIS_POSITION, onEvent()))))
				.busiestSecond();
		assertEquals(10 + 1 + 7 + 5 + 60, second.frames());
		assertEquals(83 * 160, second.worstBits(), ROUNDING);
		assertEquals(83 * 160 / 250_000.0, second.worstShare(), ROUNDING);
		assertEquals(83 * 131 * 1.082 / 250_000.0, second.typicalShare(), ROUNDING);
	}

	@Test
	void whatComesRarelyComesOnce() {
		assertEquals(2, load(traffic(device("odd", sends(DEPTH, every(1e12)), sends(HEADING, every(1.0000000001))))).busiestSecond().frames());
	}

	@Test
	void fastPacketsHoldTheBus() {
		List<BusLoad.OfMessage> bursts = load(traffic(device("gnss", sends(HEADING, every(0.1)), sends(GNSS_POSITION, every(1)), sends(SATELLITES, every(1)))))
				.bursts();
		assertEquals(List.of(SATELLITES, GNSS_POSITION), bursts.stream().map(each -> each.message().pgn()).toList());
		assertEquals(20 * 0.00064, bursts.get(0).onTheWire().seconds(), ROUNDING);
	}

	@Test
	void nothingIsNoLoad() {
		BusLoad load = load(traffic());
		assertEquals(TrafficRate.NONE, load.total());
		assertEquals(0, load.busiestSecond().worstShare());
		assertEquals(List.of(), load.bursts());
	}

	/** 44 addresses, as on the bus of the open CANboat sample logs: 160 bits a claim; 110 bits of question and 20 · 160 an answer. */
	@Test
	void aNetworkIsSwitchedOn() {
		NetworkTraffic traffic = new NetworkTraffic("bus", List.of(new Node("display", 4), new Node("others", 40)), List.of(), List.of());
		PowerUp start = PowerUp.of(traffic, BusLoad.NMEA_2000);
		assertEquals(44, start.addresses());
		assertEquals(44, start.claims().frames());
		assertEquals(44 * 160 / 250_000.0, start.claims().busy().seconds(), ROUNDING);
		assertEquals(1 + 44 * 20, start.productInformation().frames());
		assertEquals((110 + 44 * 3200) / 250_000.0, start.productInformation().busy().seconds(), ROUNDING);
	}
}
