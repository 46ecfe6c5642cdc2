/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * The cross-section of a conductor.
 *
 * @param squareMillimetres the area in mm², the unit in which the trade names conductors (not SI, on purpose)
 */
public record CrossSection(double squareMillimetres) implements ConductorSize {

	@Override
	public String toString() {
		return QuantityText.format(this);
	}
}
