/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * A temperature. It is no {@link ScalarQuantity}: its unit has an offset, so that sums and multiples of it mean nothing, and
 * no text of the language states one.
 *
 * @param celsius the value in degrees Celsius
 */
public record Temperature(double celsius) implements Comparable<Temperature> {

	@Override
	public int compareTo(Temperature other) {
		return Double.compare(celsius, other.celsius);
	}

	@Override
	public String toString() {
		return QuantityText.number(celsius) + " °C";
	}
}
