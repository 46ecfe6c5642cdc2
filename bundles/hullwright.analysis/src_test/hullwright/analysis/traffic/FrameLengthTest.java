/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;

import hullwright.network.data.Pgn;
import hullwright.network.data.Timing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrameLengthTest {

	/** Bytes, bits and bits with inserted ones at most: equations of Davis and others 2007 as canframelen (can-utils) quotes them. */
	@ParameterizedTest
	@CsvSource({ "0,67,80", "1,75,90", "2,83,100", "3,91,110", "4,99,120", "5,107,130", "6,115,140", "7,123,150", "8,131,160" })
	void lengths(int bytes, int unstuffed, int worst) {
		assertEquals(new FrameLength(unstuffed, worst), FrameLength.of(bytes));
	}

	/** 142 bits were the mean of full frames in the open CANboat sample logs, 11.5 % less than the worst. */
	@Test
	void aFullFrameOfAUsualBoat() {
		assertEquals(142, FrameLength.FULL.typical(), 0.5);
		assertEquals(0.885, FrameLength.FULL.typical() / FrameLength.FULL.worst(), 0.001);
	}

	@Test
	void noFrameIsLonger() {
		assertThrows(IllegalArgumentException.class, () -> FrameLength.of(9));
		assertThrows(IllegalArgumentException.class, () -> FrameLength.of(-1));
	}

	/** Frames and bits of messages of the open CANboat PGN database; all frames of a fast packet are full. */
	@ParameterizedTest
	@CsvSource({ "SINGLE,3,false,1,110", "SINGLE,8,false,1,160", "SINGLE,3,true,1,160", "FAST,3,false,1,160", "FAST,26,false,4,640",
			"FAST,43,true,7,1120", "FAST,134,false,20,3200" })
	void messagesAreCutIntoFrames(Pgn.Transport transport, int bytes, boolean varies, int frames, int worstBits) {
		Pgn pgn = new Pgn(130000, "Test", transport, bytes, varies, Timing.UNSTATED, Optional.empty(), false, List.of());
		Packet packet = Packet.of(pgn).orElseThrow();
		assertEquals(frames, packet.frames());
		assertEquals(worstBits, packet.worstBits());
		assertEquals(varies, packet.estimated());
	}
}
