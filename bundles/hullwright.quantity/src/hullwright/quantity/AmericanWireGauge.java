/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * A conductor size of the American wire gauge: the larger the number, the thinner the wire.
 *
 * @param number the gauge number, 0 to 40
 */
public record AmericanWireGauge(int number) implements ConductorSize {

	/** The thinnest gauge that the scale of ASTM B258 covers here. */
	public static final int THINNEST = 40;

	public AmericanWireGauge {
		if (number < 0 || number > THINNEST) {
			throw new IllegalArgumentException("no wire gauge " + number);
		}
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
