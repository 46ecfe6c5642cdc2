/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import java.util.List;

/**
 * A rule that looks at one boat as it will be built. Implementations have a public constructor without arguments, keep no
 * state, do no input or output, read no clock, and compute no physics: they compare what the analyses computed with a limit.
 * A rule that throws is switched off for the rest of the session; the others still run.
 */
public interface BoatRule {

	/** What this rule is. The same on every call. */
	RuleDescription description();

	/** What it finds on a boat, in the order of the text. Never null. */
	List<Finding> check(BoatUnderCheck boat);
}
