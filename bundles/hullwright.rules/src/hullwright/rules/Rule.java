/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

/**
 * Something that a text may break, on one boat or on a series. Implementations have a public constructor without arguments, keep no
 * state, do no input or output, read no clock, and compute no physics: they compare what the analyses computed with a limit.
 * A rule that throws is switched off for the rest of the session; the others still run.
 */
public sealed interface Rule permits BoatRule, SeriesRule {

	/** What this rule is. The same on every call. */
	RuleDescription description();
}
