/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * A length.
 *
 * @param metres the value in metres
 */
public record Length(double metres) implements ScalarQuantity<Length> {

	/** No length at all. */
	public static final Length ZERO = new Length(0);

	@Override
	public double si() {
		return metres;
	}

	@Override
	public Length withSi(double si) {
		return new Length(si);
	}

	@Override
	public Dimension dimension() {
		return Dimension.LENGTH;
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
