/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * An electric power.
 *
 * @param watts the value in watts
 */
public record Power(double watts) implements ScalarQuantity<Power> {

	@Override
	public double si() {
		return watts;
	}

	@Override
	public Power withSi(double si) {
		return new Power(si);
	}

	@Override
	public Dimension dimension() {
		return Dimension.POWER;
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
