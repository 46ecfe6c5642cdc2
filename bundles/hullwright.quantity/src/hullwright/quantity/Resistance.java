/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * An electric resistance.
 *
 * @param ohms the value in ohms
 */
public record Resistance(double ohms) implements ScalarQuantity<Resistance> {

	@Override
	public double si() {
		return ohms;
	}

	@Override
	public Resistance withSi(double si) {
		return new Resistance(si);
	}

	@Override
	public Dimension dimension() {
		return Dimension.RESISTANCE;
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
