/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

/**
 * Something that devices tell each other, as a catalog describes it.
 */
public sealed interface Message permits Pgn, Sentence {

	/** The number of a PGN or the formatter of a sentence, as the text writes it. */
	String name();

	/** What people call it. */
	String title();

	/** Its length: bytes of a PGN, characters of a sentence; 0 if nobody says. */
	int length();

	/** How often it is told unless somebody sets it otherwise. */
	Timing timing();
}
