/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialRelay;
import hullwright.analysis.serial.SerialRelays;
import hullwright.analysis.serial.Waiting;
import hullwright.network.Boat;

/**
 * Devices that pass sentences on: what comes in against what their output drains.
 */
class SerialRelayTest {

	private static final String MIXER = "mixer : line in1 : listener, 4800 baud, buffers 2 s; line in2 : listener, 38400 baud, buffers 100 ms; "
			+ "line out : talker, 4800 baud or 38400 baud; passes all from in1 to out; ";
	private static final String LOG = "log : line out : talker, 4800 baud; sends VHW every 1 s by out; sends MTW every 2 s by out\n";
	private static final String DIAL = "\ndial : line in1 : listener\n";
	private static final String LOG_LINE = "serial first { from log.out; to mixer.in1 } ";

	private static List<SerialRelay> relays(String devices, String lines) {
		Boat boat = SerialText.boat(devices, lines);
		return SerialRelays.of(boat, SerialLineFigures.of(boat));
	}

	/** 48 characters a second come, 480 go: even a full line would be drained. */
	@Test
	void anOutputAsFastAsItsInputDrainsAnything() {
		SerialRelay relay = relays(LOG + MIXER + DIAL, LOG_LINE + "serial out at 4800 baud { from mixer.out; to dial.in1 }").get(0);
		assertEquals(SerialRelay.Drains.ANYTHING, relay.drains());
		assertEquals(48, relay.told().perSecond(), 1e-9);
		assertEquals(0.1, relay.share().fraction(), 1e-12);
		assertEquals(List.of("in1"), relay.inputs().stream().map(SerialRelay.Input::port).toList());
		assertEquals(Optional.of(true), relay.inputs().get(0).bufferSuffices());
		assertTrue(relay.complete());
	}

	/** A gateway that turns 38400 into 4800 has to filter: common practice. */
	@Test
	void fromFastToSlowNeedsFiltering() {
		String ais = "ais : line out : talker, 38400 baud; sends VDM on event, at least 500 ms apart by out\n";
		SerialRelay relay = relays(ais + MIXER + "passes all from in2 to out" + DIAL,
				"serial traffic { from ais.out; to mixer.in2 } serial out at 4800 baud { from mixer.out; to dial.in1 }").get(0);
		assertEquals(SerialRelay.Drains.WHAT_IS_TOLD, relay.drains());
		assertEquals(164, relay.told().perSecond(), 1e-9);
		SerialRelay fast = relays(ais + MIXER + "passes all from in2 to out" + DIAL,
				"serial traffic { from ais.out; to mixer.in2 } serial out at 38400 baud { from mixer.out; to dial.in1 }").get(0);
		assertEquals(SerialRelay.Drains.ANYTHING, fast.drains());
	}

	/** 82 characters every 100 ms are 820 a second, and 480 go. */
	@Test
	void whatIsNeverDrainedHasNoBound() {
		SerialRelay relay = relays("ais : line out : talker, 38400 baud; sends VDM on event, at least 100 ms apart by out\n" + MIXER + "passes all from in2 to out"
				+ DIAL, "serial traffic { from ais.out; to mixer.in2 } serial out at 4800 baud { from mixer.out; to dial.in1 }").get(0);
		assertEquals(SerialRelay.Drains.NEVER, relay.drains());
		assertEquals(Optional.empty(), relay.holds());
		assertEquals(Optional.of(false), relay.inputs().get(0).bufferSuffices());
	}

	/** Of the log VHW alone is passed on, and what the device tells of its own goes out with it. */
	@Test
	void onlyWhatPassesCountsAndWhatIsToldBesides() {
		SerialRelay relay = relays(LOG + "mixer : line in1 : listener; line out : talker, 4800 baud; passes VHW from in1 to out; sends HDG every 500 ms by out" + DIAL,
				LOG_LINE + "serial out { from mixer.out; to dial.in1 }").get(0);
		assertEquals(39 + 50, relay.told().perSecond(), 1e-9);
		assertEquals(39, relay.inputs().get(0).told().perSecond(), 1e-9);
		assertEquals(Optional.empty(), relay.inputs().get(0).bufferSuffices());
	}

	/**
	 * VHW comes by a line on which it takes 57 of 480 characters at most, every second: so late it may be on the next, and 57/480 of one
	 * more may wait there.
	 */
	@Test
	void whatIsPassedOnMayComeLate() {
		Boat boat = SerialText.boat(LOG + MIXER + DIAL, LOG_LINE + "serial out at 4800 baud { from mixer.out; to dial.in1; carries VHW every 1 s }");
		Waiting.Bounded waiting = assertInstanceOf(Waiting.Bounded.class, SerialLineFigures.of(boat).get(1).waiting());
		assertEquals(Math.ceil(39 * (1 + 57 / 480.0)), waiting.backlog());
	}

	@Test
	void whatComesFromAFloodHasNoBoundEither() {
		Boat boat = SerialText.boat("log : line out : talker, 4800 baud; sends HDG every 50 ms by out\n" + MIXER + DIAL,
				LOG_LINE + "serial out at 38400 baud { from mixer.out; to dial.in1; carries HDG every 50 ms }");
		assertEquals(new Waiting.Unbounded(Waiting.Reason.FED_WITHOUT_BOUND), SerialLineFigures.of(boat).get(1).waiting());
	}

	@Test
	void aCircleEnds() {
		String two = "mixer : line in1 : listener; line out : talker, 4800 baud; passes all from in1 to out\n"
				+ "other : line in1 : listener; line out : talker, 4800 baud; passes all from in1 to out\n";
		Boat boat = SerialText.boat(two, "serial first { from mixer.out; to other.in1; carries VHW } serial second { from other.out; to mixer.in1; carries VHW }");
		assertEquals(List.of(new Waiting.Unbounded(Waiting.Reason.FED_WITHOUT_BOUND), new Waiting.Unbounded(Waiting.Reason.FED_WITHOUT_BOUND)),
				SerialLineFigures.of(boat).stream().map(SerialLineFigures::waiting).toList());
	}

	@Test
	void whatCannotBeCountedIsTold() {
		assertFalse(relays("radio : line out : talker, 4800 baud; sends DSC on event by out\n" + MIXER + DIAL,
				"serial radioLine { from radio.out; to mixer.in1 } serial out at 4800 baud { from mixer.out; to dial.in1 }").get(0).complete());
	}

	@Test
	void nothingIsPassedOnWithoutALineOnBothSides() {
		assertEquals(List.of(), relays(LOG + MIXER + DIAL, LOG_LINE));
		assertEquals(List.of(), relays(LOG + MIXER + DIAL, "serial out at 4800 baud { from mixer.out; to dial.in1 }"));
		assertEquals(List.of(), relays(LOG + "mixer : line in1 : listener; line out : talker" + DIAL, LOG_LINE + "serial out { from mixer.out; to dial.in1 }"));
	}
}
