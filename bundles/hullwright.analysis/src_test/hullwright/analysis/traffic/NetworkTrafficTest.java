/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static hullwright.analysis.traffic.Devices.DEPTH;
import static hullwright.analysis.traffic.Devices.ENGINE;
import static hullwright.analysis.traffic.Devices.FLUID_LEVEL;
import static hullwright.analysis.traffic.Devices.HEADING;
import static hullwright.analysis.traffic.Devices.RUDDER;
import static hullwright.analysis.traffic.Devices.device;
import static hullwright.analysis.traffic.Devices.drop;
import static hullwright.analysis.traffic.Devices.every;
import static hullwright.analysis.traffic.Devices.inBackbone;
import static hullwright.analysis.traffic.Devices.network;
import static hullwright.analysis.traffic.Devices.onEvent;
import static hullwright.analysis.traffic.Devices.pgn;
import static hullwright.analysis.traffic.Devices.sends;
import static hullwright.analysis.traffic.Devices.traffic;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import hullwright.network.FittedDevice;
import hullwright.network.data.Pgn;
import hullwright.network.data.Sentence;
import hullwright.network.data.Timing;
import hullwright.network.part.Ends;
import hullwright.network.part.PartIdentity;
import hullwright.network.part.Terminator;
import hullwright.quantity.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NetworkTrafficTest {

	private static List<String> told(NetworkTraffic traffic) {
		return traffic.messages().stream().map(BusMessage::toString).toList();
	}

	private static LeftOut.Reason reason(Pgn pgn, Timing timing) {
		NetworkTraffic traffic = traffic(device("odd", sends(pgn, timing)));
		assertEquals(List.of(), traffic.messages());
		assertEquals(1, traffic.leftOut().size());
		return traffic.leftOut().get(0).reason();
	}

	@Test
	void devicesTellWhereverTheyAre() {
		FittedDevice wind = device("wind", sends(HEADING, every(0.1)));
		FittedDevice gauge = device("gauge", List.of("in", "out"), sends(ENGINE, every(0.5), "out"));
		FittedDevice depth = device("depth", sends(DEPTH, every(1)));
		Terminator inLine = new Terminator(PartIdentity.named("Test", "mastEnd"), Ends.NONE, true, Optional.empty());
		NetworkTraffic traffic = NetworkTraffic.of(network(List.of(inBackbone(wind, inLine), inBackbone(gauge, gauge.model())), drop(depth, null),
				Devices.prepared()));
		assertEquals(List.of("127250 from wind", "127489 from gauge", "128267 from depth"), told(traffic));
		assertEquals(List.of(new Node("wind", 1), new Node("gauge", 1), new Node("depth", 1)), traffic.nodes());
	}

	@Test
	void aDeviceWithTwoPortsTellsEachNetworkWhatGoesByItsPort() {
		FittedDevice display = device("display", List.of("first", "second"), sends(DEPTH, every(1), "first"), sends(ENGINE, every(0.5), "second"),
				sends(RUDDER, every(0.1)));
		assertEquals(List.of("128267 from display", "127245 from display"), told(NetworkTraffic.of(network(List.of(), drop(display, "first")))));
		assertEquals(List.of("127489 from display", "127245 from display"), told(NetworkTraffic.of(network(List.of(), drop(display, "second")))));
		// a drop that names no port meets the first
		assertEquals(List.of("128267 from display", "127245 from display"), told(NetworkTraffic.of(network(List.of(), drop(display, null)))));
	}

	@Test
	void aDeviceThatIsTwiceOnANetworkTellsOnce() {
		FittedDevice bridge = device("bridge", List.of("first", "second"), sends(DEPTH, every(1)), sends(ENGINE, every(0.5), "second"));
		NetworkTraffic traffic = NetworkTraffic.of(network(List.of(), drop(bridge, "first"), drop(bridge, "second")));
		assertEquals(List.of("128267 from bridge", "127489 from bridge"), told(traffic));
		assertEquals(1, traffic.nodes().size());
	}

	@Test
	void eachDataInstanceIsAMessage() {
		NetworkTraffic traffic = traffic(device("tanks", sends(FLUID_LEVEL, every(2.5), 0), sends(FLUID_LEVEL, every(2.5), 1)));
		assertEquals(List.of(Optional.of(0), Optional.of(1)), traffic.messages().stream().map(BusMessage::instance).toList());
		assertEquals(new Release(true, new Duration(2.5)), traffic.messages().get(0).release());
	}

	@Test
	void sentencesGoOverOtherLines() {
		NetworkTraffic traffic = traffic(device("gateway", sends(new Sentence("VHW", "Speed", 40, every(1)), every(1))));
		assertEquals(List.of(), traffic.messages());
		assertEquals(List.of(), traffic.leftOut());
	}

	@Test
	void anEventNeedsALeastInterval() {
		assertEquals(new Release(false, new Duration(0.2)),
				traffic(device("switch", sends(pgn(127501, Pgn.Transport.SINGLE, 8, 3), onEvent(0.2)))).messages().get(0).release());
		assertEquals(LeftOut.Reason.EVENT_WITHOUT_LEAST_INTERVAL, reason(pgn(129038, Pgn.Transport.FAST, 28, 4), onEvent()));
	}

	@Test
	void whatNobodySaysIsLeftOutAndSaidSo() {
		assertEquals(LeftOut.Reason.TIMING_UNSTATED, reason(HEADING, Timing.UNSTATED));
		assertEquals(LeftOut.Reason.LENGTH_UNSTATED, reason(pgn(130000, Pgn.Transport.FAST, 0, 6), every(1)));
		assertEquals(LeftOut.Reason.FRAMING_UNSTATED, reason(pgn(130000, Pgn.Transport.UNSTATED, 8, 6), every(1)));
	}

	@Test
	void whatCannotBeIsLeftOutAsAMistake() {
		assertEquals(LeftOut.Reason.LENGTH_IMPOSSIBLE, reason(pgn(130000, Pgn.Transport.SINGLE, 9, 6), every(1)));
		assertEquals(LeftOut.Reason.LENGTH_IMPOSSIBLE, reason(pgn(130000, Pgn.Transport.FAST, 224, 6), every(1)));
		assertEquals(LeftOut.Reason.LENGTH_IMPOSSIBLE, reason(pgn(130000, Pgn.Transport.FAST, -1, 6), every(1)));
		assertEquals(LeftOut.Reason.NUMBER_IMPOSSIBLE, reason(pgn(-1, Pgn.Transport.SINGLE, 8, 6), every(1)));
		assertEquals(LeftOut.Reason.NUMBER_IMPOSSIBLE, reason(pgn(262386, Pgn.Transport.SINGLE, 8, 6), every(1)));
		assertTrue(LeftOut.Reason.NUMBER_IMPOSSIBLE.isMistake() && !LeftOut.Reason.TIMING_UNSTATED.isMistake());
	}

	@ParameterizedTest
	@ValueSource(doubles = { 0, -1, 1e-300, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY })
	void noIntervalIsThatShortOrThatLong(double seconds) {
		assertEquals(LeftOut.Reason.INTERVAL_IMPOSSIBLE, reason(HEADING, every(seconds)));
		assertEquals(LeftOut.Reason.INTERVAL_IMPOSSIBLE, reason(HEADING, onEvent(seconds)));
	}

	@Test
	void instancesThatAreLeftOutAreToldOnce() {
		NetworkTraffic traffic = traffic(device("tanks", sends(FLUID_LEVEL, onEvent(), 0), sends(FLUID_LEVEL, onEvent(), 1), sends(FLUID_LEVEL, onEvent(), 2)),
				device("tank", sends(FLUID_LEVEL, onEvent())));
		assertEquals(List.of(3, 1), traffic.leftOut().stream().map(LeftOut::count).toList());
	}

	@Test
	void whatABridgePassesOnCanBeAdded() {
		NetworkTraffic engines = traffic(device("engine", sends(ENGINE, every(0.5))));
		NetworkTraffic instruments = traffic(device("depth", sends(DEPTH, every(1))))
				.plus(List.of(engines.messages().get(0).withJitter(new Duration(0.01))));
		assertEquals(List.of("128267 from depth", "127489 from engine"), told(instruments));
		assertEquals(new Duration(0.01), instruments.messages().get(1).jitter());
	}
}
