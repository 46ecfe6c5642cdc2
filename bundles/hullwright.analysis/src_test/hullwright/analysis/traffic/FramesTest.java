/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import hullwright.network.data.Pgn;
import hullwright.network.data.Timing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FramesTest {

	/** Known counts; 134 bytes in 20 frames were seen on a real bus (CANboat sample logs), the others follow from the framing. */
	@ParameterizedTest
	@CsvSource({ "0,1", "6,1", "7,2", "9,2", "13,2", "14,3", "20,3", "26,4", "28,5", "43,7", "47,7", "75,11", "134,20", "223,32" })
	void fastPackets(int bytes, int frames) {
		assertEquals(frames, Frames.ofFastPacket(bytes));
	}

	@Test
	void noFastPacketIsLonger() {
		assertEquals(223, Frames.MOST_BYTES);
		assertThrows(IllegalArgumentException.class, () -> Frames.ofFastPacket(224));
		assertThrows(IllegalArgumentException.class, () -> Frames.ofFastPacket(-1));
	}

	@Test
	void aPgnIsFramedAsTheListSays() {
		assertEquals(OptionalInt.of(1), Frames.of(pgn(Pgn.Transport.SINGLE, 8)));
		assertEquals(OptionalInt.of(2), Frames.of(pgn(Pgn.Transport.FAST, 8)));
		assertEquals(OptionalInt.empty(), Frames.of(pgn(Pgn.Transport.UNSTATED, 8)));
		assertEquals(OptionalInt.empty(), Frames.of(pgn(Pgn.Transport.SINGLE, 9)));
		assertEquals(OptionalInt.empty(), Frames.of(pgn(Pgn.Transport.FAST, 0)));
	}

	private static Pgn pgn(Pgn.Transport transport, int length) {
		return new Pgn(130000, "Test", transport, length, false, Timing.UNSTATED, Optional.empty(), false, List.of());
	}
}
