/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * A voltage or a voltage difference.
 *
 * @param volts the value in volts
 */
public record Voltage(double volts) implements ScalarQuantity<Voltage> {

	@Override
	public double si() {
		return volts;
	}

	@Override
	public Voltage withSi(double si) {
		return new Voltage(si);
	}

	@Override
	public Dimension dimension() {
		return Dimension.VOLTAGE;
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
