/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import hullwright.analysis.line.BitTiming;
import hullwright.quantity.BitRate;

/**
 * The delay of a line against published tables of bus lengths.
 */
class BitTimingTest {

	/** CiA Draft Standard 102 v2.0, as reprinted on two public support pages: bit rate, bus length, bit time, sample point. */
	@ParameterizedTest
	@CsvSource({ "1000000, 25, 1, 0.75", "800000, 50, 1.25, 1", "500000, 100, 2, 1.75", "250000, 250, 4, 3.5", "125000, 500, 8, 7",
			"50000, 1000, 20, 17.5", "20000, 2500, 50, 43.75", "10000, 5000, 100, 87.5" })
	void theDelayModelAllowsEveryPublishedLengthAndNotOneAndAHalfTimesAsMuch(double rate, double metres, double bitMicroseconds,
			double sampleMicroseconds) {
		BitTiming timing = BitTiming.of(new BitRate(rate)).orElseThrow();
		assertEquals(bitMicroseconds, 1e6 / timing.rate().si(), 1e-9);
		assertEquals(sampleMicroseconds, timing.samplePoint().seconds() * 1e6, 1e-9);
		double longest = timing.longestLine(BitTiming.USUAL_DELAY).metres();
		assertTrue(longest >= metres, "the published " + metres + " m fit into the model's " + longest);
		assertTrue(longest < 1.5 * metres, "the model's " + longest + " m are not far beyond the published " + metres);
	}

	/** The same table's arithmetic at 250 kbit/s: 2 * (1250 ns + 300 ns) = 3100 ns of 3500 ns. */
	@Test
	void theBudgetOfABitAt250KilobitsPerSecond() {
		double used = 2 * (250 * 5e-9 + BitTiming.NMEA_2000.inOutDelay().seconds());
		assertEquals(3100e-9, used, 1e-15);
		assertEquals(290, BitTiming.NMEA_2000.longestLine(BitTiming.USUAL_DELAY).metres(), 1e-9);
	}
}
