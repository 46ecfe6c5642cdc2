/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import hullwright.network.part.Load;
import hullwright.quantity.Quantity;

/**
 * How much the devices draw. What a catalog does not state is replaced by the next lower that it does.
 */
public enum LoadLevel {
	/** What they usually draw. */
	NOMINAL,
	/** What they are guaranteed not to exceed. */
	GUARANTEED,
	/** What they draw when all are switched on at once. */
	STARTING;

	/** What a load draws at this level. */
	public Quantity of(Load load) {
		return switch (this) {
		case NOMINAL -> load.nominal();
		case GUARANTEED -> load.most().orElse(load.nominal());
		case STARTING -> load.start().or(load::most).orElse(load.nominal());
		};
	}
}
