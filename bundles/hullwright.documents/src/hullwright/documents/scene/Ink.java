/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.scene;

/**
 * What a colour says. A {@link Palette} says which colour that is on a light or a dark ground.
 */
public enum Ink {
	/** The ground. */
	GROUND,
	/** The body of the boat. */
	HULL,
	/** The inside of a place. */
	PLACE,
	/** The border of a place. */
	PLACE_EDGE,
	/** The inside of a thing. */
	THING,
	/** The border of a thing. */
	THING_EDGE,
	/** What is written. */
	TEXT,
	/** What is written smaller and matters less. */
	SOFT_TEXT,
	/** The first network, and every sixth after it. */
	NETWORK_1,
	/** The second network. */
	NETWORK_2,
	/** The third network. */
	NETWORK_3,
	/** The fourth network. */
	NETWORK_4,
	/** The fifth network. */
	NETWORK_5,
	/** The sixth network. */
	NETWORK_6,
	/** Supplies and what leads from them. */
	POWER,
	/** Serial lines. */
	SERIAL,
	/** Radio links. */
	RADIO,
	/** What must be mended. */
	ERROR,
	/** What should be mended. */
	WARNING,
	/** What could be better. */
	ADVICE,
	/** What is chosen. */
	CHOSEN;

	/** The colour of a network by its number, from 0. */
	public static Ink ofNetwork(int number) {
		return values()[NETWORK_1.ordinal() + Math.floorMod(number, 6)];
	}
}
