/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.quantity.DelayPerLength;
import hullwright.quantity.Duration;
import hullwright.quantity.Length;

/**
 * How long a signal takes between the two nodes that are farthest apart, against what the bit timing allows.
 *
 * @param from the qualified name of one of the two devices
 * @param to the qualified name of the other
 * @param distance the length of line between them
 * @param delay how long a signal takes over it, one way
 * @param allowed how long it may take
 */
public record Propagation(String from, String to, Length distance, Duration delay, Duration allowed) {

	/** How much longer a signal might take; negative if it takes too long. */
	public Duration margin() {
		return allowed.minus(delay);
	}

	/** How much longer the line might be, of a cable with this delay. */
	public Length marginOf(DelayPerLength cable) {
		return new Length(margin().seconds() / cable.si());
	}
}
