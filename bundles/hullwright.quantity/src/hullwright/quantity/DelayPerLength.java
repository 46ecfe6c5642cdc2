/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * How long a signal takes along a cable, per length.
 *
 * @param secondsPerMetre the value in second per metre
 */
public record DelayPerLength(double secondsPerMetre) implements ScalarQuantity<DelayPerLength> {

	@Override
	public double si() {
		return secondsPerMetre;
	}

	@Override
	public DelayPerLength withSi(double si) {
		return new DelayPerLength(si);
	}

	@Override
	public Dimension dimension() {
		return Dimension.DELAY_PER_LENGTH;
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
