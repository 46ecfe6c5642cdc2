/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import java.util.List;

/**
 * A rule that looks at a series as a whole: what it offers, what it sells, and all boats that come of it.
 */
public non-sealed interface SeriesRule extends Rule {

	/** What it finds on a series, in the order of the text. Never null. */
	List<Finding> check(SeriesUnderCheck series);
}
