/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.OptionalInt;
import java.util.Set;

import hullwright.network.Selection;

/**
 * What decides whether something is fitted: the options that were ordered, and which hull it is.
 *
 * @param options the options
 * @param hull the number of the hull; a boat that is no hull yet, or one without a number, is newer than all that have one
 */
record Order(Set<String> options, OptionalInt hull) {

	static Order of(Selection selection) {
		return new Order(selection.options(), selection.hull().map(Order::number).orElse(OptionalInt.empty()));
	}

	private static OptionalInt number(String hull) {
		try {
			return OptionalInt.of(Integer.parseInt(hull));
		} catch (NumberFormatException e) {
			return OptionalInt.empty();
		}
	}
}
