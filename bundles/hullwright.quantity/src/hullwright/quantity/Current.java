/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * An electric current.
 *
 * @param amperes the value in amperes
 */
public record Current(double amperes) implements ScalarQuantity<Current> {

	/** One load equivalency number: 50 mA, as the trade's guides and the field text of the open message datasets state it. */
	public static final Current LEN = new Current(0.050);

	/**
	 * The load equivalency number that a device with this current is given: rounded up to the next whole one, so that
	 * 151 mA is 4 LEN.
	 */
	public int loadEquivalencyNumber() {
		return (int) Math.ceil(amperes / LEN.amperes - TOLERANCE);
	}

	@Override
	public double si() {
		return amperes;
	}

	@Override
	public Current withSi(double si) {
		return new Current(si);
	}

	@Override
	public Dimension dimension() {
		return Dimension.CURRENT;
	}

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
