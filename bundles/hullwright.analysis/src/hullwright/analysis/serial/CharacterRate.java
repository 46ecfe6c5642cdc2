/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import hullwright.quantity.BitRate;
import hullwright.quantity.Duration;
import hullwright.quantity.Ratio;

/**
 * How many characters go over a serial line, or have to, in a second.
 *
 * @param perSecond the value in characters per second
 */
public record CharacterRate(double perSecond) {

	/** Nothing. */
	public static final CharacterRate NONE = new CharacterRate(0);

	/**
	 * A start bit, eight bits of data of which the last is 0, no parity and a stop bit: ten bits (digital-interface appendices of
	 * two public installation manuals for AIS and satellite radio).
	 */
	public static final int BITS_PER_CHARACTER = 10;

	/** What a line carries that signals so fast: 480 characters a second at 4800 bit/s. */
	public static CharacterRate of(BitRate rate) {
		return new CharacterRate(rate.bitsPerSecond() / BITS_PER_CHARACTER);
	}

	/** Both together. */
	public CharacterRate plus(CharacterRate other) {
		return new CharacterRate(perSecond + other.perSecond);
	}

	/** The part that this takes of a line; above 1 the line cannot carry it. */
	public Ratio shareOf(CharacterRate line) {
		return new Ratio(perSecond / line.perSecond);
	}

	/** How long a line takes for this many characters without a pause. */
	public Duration timeFor(long characters) {
		return new Duration(characters / perSecond);
	}
}
