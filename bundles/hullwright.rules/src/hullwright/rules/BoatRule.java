/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import java.util.List;

/**
 * A rule that looks at one boat as it will be built.
 */
public non-sealed interface BoatRule extends Rule {

	/** What it finds on a boat, in the order of the text. Never null. */
	List<Finding> check(BoatUnderCheck boat);
}
