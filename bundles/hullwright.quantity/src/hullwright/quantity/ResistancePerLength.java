/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * The resistance of one conductor per length.
 *
 * @param ohmsPerMetre the value in ohm per metre
 */
public record ResistancePerLength(double ohmsPerMetre) implements ScalarQuantity<ResistancePerLength> {

	/** The resistance of one conductor of the given length. */
	public Resistance over(Length length) {
		return new Resistance(ohmsPerMetre * length.metres());
	}

	@Override
	public double si() {
		return ohmsPerMetre;
	}

	@Override
	public ResistancePerLength withSi(double si) {
		return new ResistancePerLength(si);
	}

	@Override
	public Dimension dimension() {
		return Dimension.RESISTANCE_PER_LENGTH;
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
