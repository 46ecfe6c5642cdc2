/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The load of a sentence on 4800 bit/s against what the trade reckons with: longest form over usual interval over 480 characters a
 * second, rounded to a per cent (common practice). The longest forms were counted in the checksum-valid samples of the open parser
 * nmea0183-signalk, commit e5879265 (Apache-2.0); those of GSA and XDR are from memory, and GGA stands at the limit of 82.
 */
class SentenceLoadTest {

	private static final double HALF_A_PER_CENT = 0.005;

	@ParameterizedTest
	@CsvSource({ "RMC, 1 s, 16", "GGA, 1 s, 17", "GLL, 1 s, 10", "GNS, 1 s, 15", "VTG, 1 s, 8", "ZDA, 1 s, 8", "GSV, 1 s, 15", "GSA, 1 s, 11",
			"DPT, 1 s, 4", "DBT, 1 s, 8", "DBK, 1 s, 8", "DBS, 1 s, 8", "VHW, 1 s, 8", "VLW, 1 s, 8", "MTW, 1 s, 4", "MWV, 500 ms, 11",
			"MWD, 1 s, 8", "VWR, 1 s, 8", "VWT, 1 s, 8", "HDG, 1 s, 5", "HDG, 100 ms, 52", "HDM, 1 s, 4", "HDT, 1 s, 4", "HDT, 100 ms, 44",
			"ROT, 1 s, 4", "ROT, 100 ms, 38", "RSA, 1 s, 4", "RSA, 200 ms, 22", "RPM, 1 s, 6", "RPM, 500 ms, 12", "XDR, 1 s, 17", "APB, 1 s, 11",
			"RMB, 1 s, 15", "XTE, 1 s, 5", "BOD, 1 s, 8", "BWC, 1 s, 14", "BWR, 1 s, 14", "VDR, 1 s, 6", "HSC, 1 s, 6", "MDA, 1 s, 16" })
	void theLoadIsWhatTheTradeReckonsWith(String formatter, String interval, int perCent) {
		double share = SerialText.line("log : line out : talker, 4800 baud; sends " + formatter + " every " + interval + " by out\n"
				+ "dial : line in1 : listener", "{ from log.out; to dial.in1 }").use().orElseThrow().regular().fraction();
		assertEquals(perCent / 100.0, share, HALF_A_PER_CENT + 1e-12);
	}
}
