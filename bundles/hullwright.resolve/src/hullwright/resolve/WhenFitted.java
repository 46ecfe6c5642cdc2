/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.Set;

/**
 * Something of a plan that is fitted on some boats.
 *
 * @param item what it is
 * @param when the conditions that must all hold
 * @param unless a condition that must not hold, or null
 */
record WhenFitted<T>(T item, FittedWhen when, FittedWhen unless) {

	boolean on(Set<String> options) {
		return when.holds(options) && (unless == null || !unless.holds(options));
	}
}
