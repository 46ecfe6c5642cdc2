/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

/**
 * What can be wrong with a text as such, before any boat is looked at. The ids are those under which the problems are
 * reported and never change.
 */
public final class LanguageProblem {

	/** The text does not follow the grammar. */
	public static final String NOT_UNDERSTOOD = "language/not-understood";
	/** A quantity stands without its unit; the issue carries the quantity with the likely unit. */
	public static final String UNIT_MISSING = "language/unit-missing";
	/** A quantity has a wrong or unknown unit, is negative or no number. */
	public static final String QUANTITY_WRONG = "language/quantity-wrong";
	/** A name refers to nothing; the issue carries a near name if there is one. */
	public static final String UNKNOWN_NAME = "language/unknown-name";
	/** Two things that can be referred to in one place share a name. */
	public static final String NAME_TAKEN = "language/name-taken";
	/** A value that a thing has once is stated twice. */
	public static final String STATED_TWICE = "language/stated-twice";
	/** An imported file does not exist or lies outside the project. */
	public static final String IMPORT_NOT_FOUND = "language/import-not-found";
	/** A supply or converter is fed by itself. */
	public static final String FEEDS_IN_CIRCLE = "language/feeds-in-circle";
	/** A place lies above itself. */
	public static final String LIES_IN_CIRCLE = "language/lies-in-circle";
	/** Files import each other in a circle. */
	public static final String IMPORT_CYCLE = "language/import-cycle";

	private LanguageProblem() {
	}
}
