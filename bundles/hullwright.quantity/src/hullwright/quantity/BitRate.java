/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * How fast a line signals. On a serial line one baud is one bit per second.
 *
 * @param bitsPerSecond the value in bits per second
 */
public record BitRate(double bitsPerSecond) implements ScalarQuantity<BitRate> {

	@Override
	public double si() {
		return bitsPerSecond;
	}

	@Override
	public BitRate withSi(double si) {
		return new BitRate(si);
	}

	@Override
	public Dimension dimension() {
		return Dimension.BIT_RATE;
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
