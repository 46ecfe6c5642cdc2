/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import hullwright.quantity.BitRate;
import hullwright.quantity.Ratio;

/**
 * How much of a serial line its sentences take.
 *
 * @param carries what the line carries
 * @param regular the share of what is told regularly; 1 is all of the line, and more can be asked for
 * @param withEvents the same with what events tell at most
 * @param busiestSecond the share of the busiest second; above 1 the rest waits for the next
 */
public record LineUse(CharacterRate carries, Ratio regular, Ratio withEvents, Ratio busiestSecond) {

	/** Lines are filled to four fifths at most (common practice). */
	public static final Ratio PRACTICE = new Ratio(0.8);

	static LineUse of(SerialLoad load, BitRate rate) {
		CharacterRate carries = CharacterRate.of(rate);
		return new LineUse(carries, load.regular().shareOf(carries), load.total().shareOf(carries),
				new CharacterRate(load.busiestSecond()).shareOf(carries));
	}

	/** How much of the line what is told regularly leaves up to {@link #PRACTICE}; negative if it takes more. */
	public Ratio margin() {
		return PRACTICE.minus(regular);
	}
}
