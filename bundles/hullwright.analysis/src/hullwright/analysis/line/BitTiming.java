/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.BitRate;
import hullwright.quantity.DelayPerLength;
import hullwright.quantity.Duration;
import hullwright.quantity.Length;

/**
 * How a bit is timed, and how far apart nodes may be so that all of them see the same bit.
 *
 * <p>Within one bit a dominant edge must reach the farthest node, pass through its transceiver and controller, and its answer
 * must come back before the bit is sampled: 2 · (delay of the line + in-out delay of a node) ≤ time to the sample point. The rows
 * are those of CiA Draft Standard 102 v2.0, bit-timing table and notes, as reprinted on two public support pages.
 *
 * @param rate the bit rate
 * @param quanta into how many quanta a bit is divided
 * @param sampledAfter after how many of them it is sampled
 * @param inOutDelay the delay of a node's transceiver and controller, both ways once
 */
public record BitTiming(BitRate rate, int quanta, int sampledAfter, Duration inOutDelay) {

	/** The delay of a line on which the table rests. */
	public static final DelayPerLength USUAL_DELAY = new DelayPerLength(5e-9);

	private static final List<BitTiming> TABLE = List.of(
			row(1_000_000, 8, 6, 210e-9), row(800_000, 10, 8, 210e-9), row(500_000, 16, 14, 300e-9), row(250_000, 16, 14, 300e-9),
			row(125_000, 16, 14, 450e-9), slowRow(50_000), slowRow(20_000), slowRow(10_000));

	/** NMEA 2000 / IEC 61162-3: 250 kbit/s. */
	public static final BitTiming NMEA_2000 = of(new BitRate(250_000)).orElseThrow();

	private static BitTiming row(double rate, int quanta, int sampledAfter, double inOut) {
		return new BitTiming(new BitRate(rate), quanta, sampledAfter, new Duration(inOut));
	}

	/** At 50 kbit/s and below the in-out delay is taken as one and a half quanta. */
	private static BitTiming slowRow(double rate) {
		return row(rate, 16, 14, 1.5 / rate / 16);
	}

	/** The timing of a bit rate that the table has. */
	public static Optional<BitTiming> of(BitRate rate) {
		return TABLE.stream().filter(each -> each.rate.equals(rate)).findFirst();
	}

	/** The time from the start of a bit to its sample point. */
	public Duration samplePoint() {
		return new Duration((double) sampledAfter / quanta / rate.si());
	}

	/** The longest one-way delay of a line. */
	public Duration longestDelay() {
		return new Duration(samplePoint().seconds() / 2 - inOutDelay.seconds());
	}

	/** The longest line of a delay per length. */
	public Length longestLine(DelayPerLength delay) {
		return new Length(longestDelay().seconds() / delay.si());
	}
}
