/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * A length of time, such as the interval of a message.
 *
 * @param seconds the value in seconds
 */
public record Duration(double seconds) implements ScalarQuantity<Duration> {

	@Override
	public double si() {
		return seconds;
	}

	@Override
	public Duration withSi(double si) {
		return new Duration(si);
	}

	@Override
	public Dimension dimension() {
		return Dimension.DURATION;
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
