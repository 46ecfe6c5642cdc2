/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * How large one thing is against another of its kind, such as what a converter gives against what it takes. It is written in
 * per cent.
 *
 * @param fraction the value, 1 if both are equal
 */
public record Ratio(double fraction) implements ScalarQuantity<Ratio> {

	@Override
	public double si() {
		return fraction;
	}

	@Override
	public Ratio withSi(double si) {
		return new Ratio(si);
	}

	@Override
	public Dimension dimension() {
		return Dimension.RATIO;
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
