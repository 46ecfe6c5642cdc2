/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import hullwright.analysis.serial.AisWorstCase;
import hullwright.analysis.serial.SerialLineFigures;

/**
 * What AIS takes of a line at worst.
 */
class AisOnLineTest {

	private static final String RECEIVER = "ais : line out : talker, differential, 38400 baud or 4800 baud; sends VDM on event, at least 30 ms apart by out; "
			+ "sends VDO on event by out\ndial : line in1 : listener, isolated, draws 2 mA\n";

	private static SerialLineFigures at(int baud) {
		return SerialText.line(RECEIVER, "at " + baud + " baud { from ais.out; to dial.in1 }");
	}

	/**
	 * ITU-R M.1371 (from memory): 2250 slots a minute on each of two channels, and 168 bits in a message of one slot. In characters of
	 * six bits that is a sentence of 49: the example below is made up, field by field as IEC 61162-1 has them (from memory).
	 */
	@Test
	void aSlotIsASentenceOf49Characters() {
		String sentence = "!AIVDM,1,1,,A," + "0".repeat(168 / 6) + ",0*26\r\n";
		assertEquals(sentence.length(), AisWorstCase.CHARACTERS);
		assertEquals(3675, at(38400).ais().orElseThrow().tells().perSecond(), 1e-9);
		assertEquals(75.0, AisWorstCase.CHANNELS * AisWorstCase.SLOTS_PER_MINUTE / 60.0);
	}

	/** 96 % of 38400 bit/s: trade lists. */
	@Test
	void fullChannelsFitTheFastLineAndNotTheSlowOne() {
		AisWorstCase fast = at(38400).ais().orElseThrow();
		assertEquals(0.96, fast.taken().orElseThrow().fraction(), 0.005);
		assertEquals(Optional.of(true), fast.fits());
		AisWorstCase slow = at(4800).ais().orElseThrow();
		assertTrue(slow.taken().orElseThrow().fraction() > 7);
		assertEquals(Optional.of(false), slow.fits());
	}

	/** The stated interval has figures of its own: 82 characters every 30 ms at most, 71 %. */
	@Test
	void itStandsBesideTheStatedInterval() {
		assertEquals(82 / 0.03 / 3840, at(38400).use().orElseThrow().withEvents().fraction(), 1e-9);
	}

	/** VDO alone is what this ship reports of itself, once in two seconds at most. */
	@Test
	void ownReportsAloneFillNoChannel() {
		SerialLineFigures own = SerialText.line("ais : line out : talker, 4800 baud; sends VDO on event by out\ndial : line in1 : listener", "{ from ais.out; to dial.in1 }");
		assertEquals(Optional.empty(), own.ais());
	}

	@Test
	void aLineOfUnknownRateHasNoShare() {
		assertEquals(Optional.empty(), SerialText.line(RECEIVER, "{ from ais.out; to dial.in1 }").ais().orElseThrow().fits());
	}
}
