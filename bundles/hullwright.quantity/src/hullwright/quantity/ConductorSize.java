/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * The size of a conductor as the trade gives it: a gauge number or a cross-section. What resistance follows from it is the
 * business of the analyses.
 */
public sealed interface ConductorSize extends Quantity permits AmericanWireGauge, CrossSection {

	@Override
	default Dimension dimension() {
		return Dimension.CONDUCTOR_SIZE;
	}
}
