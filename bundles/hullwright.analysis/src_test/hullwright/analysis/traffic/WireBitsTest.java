/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Random;

import org.junit.jupiter.api.Test;

/**
 * The bits of real frames against the equations of their length.
 */
class WireBitsTest {

	/** The check value of CRC-15/CAN in the public catalogue of checksums (from memory). */
	@Test
	void theChecksumIsThatOfCan() {
		assertEquals(0x059E, WireBits.checksum("123456789".getBytes(StandardCharsets.US_ASCII)));
	}

	@Test
	void noFrameIsLongerOrShorterThanTheEquationsSay() {
		Random random = new Random(9);
		int[] kinds = { 0x00, 0xFF, 0x1F, 0xC1, 0x78 };
		for (int i = 0; i < 20_000; i++) {
			int[] data = new int[random.nextInt(9)];
			for (int each = 0; each < data.length; each++) {
				data[each] = random.nextInt(3) == 0 ? random.nextInt(256) : kinds[random.nextInt(kinds.length)];
			}
			FrameLength length = FrameLength.of(data.length);
			int bits = WireBits.of(random.nextInt(1 << 29), data);
			assertTrue(bits >= length.unstuffed() && bits <= length.worst(), bits + " bits with " + data.length + " bytes");
		}
	}
}
