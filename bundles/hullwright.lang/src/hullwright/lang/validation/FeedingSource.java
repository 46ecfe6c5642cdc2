/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.validation;

import hullwright.spec.Converter;
import hullwright.spec.PowerSource;
import hullwright.spec.SupplySource;

/**
 * What feeds a source of power.
 */
final class FeedingSource {

	private FeedingSource() {
	}

	/** The source before this one, or null if it is the first or the text does not say. */
	static PowerSource of(PowerSource source) {
		if (source instanceof Converter converter) {
			return converter.getFrom();
		}
		return source instanceof SupplySource supply ? supply.getFrom() : null;
	}
}
