/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * A physical quantity: a number of SI units and the kind of thing it measures. Immutable.
 */
public sealed interface Quantity
		permits ScalarQuantity, ConductorSize {

	/** The kind of quantity. */
	Dimension dimension();
}
