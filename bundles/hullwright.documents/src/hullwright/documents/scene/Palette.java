/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.scene;

import java.util.EnumMap;
import java.util.Map;

/**
 * The colours of a picture. Each is 0xRRGGBB. No colour says anything alone: shapes, dashes and words say the same, since one man
 * in twelve tells red from green with difficulty.
 */
public enum Palette {
	/** On a light ground, and on paper. */
	LIGHT(0xffffff, 0xf1f4f6, 0xfbfcfd, 0xb9c4cc, 0xffffff, 0x55636d, 0x1c252b, 0x5f6b74,
			new int[] { 0x0b5c8a, 0x7a3e9d, 0x2f7d4f, 0x9a5a00, 0xa3325c, 0x4a5a9e }, 0x9a4b00, 0x3d6b5c, 0x6a5aa8,
			0xb3261e, 0x9a6700, 0x0a6577, 0xd9efff),
	/** On a dark ground. */
	DARK(0x1e2327, 0x262c31, 0x2a3137, 0x4d5963, 0x313940, 0x9aa7b1, 0xe6ebef, 0xa8b4bd,
			new int[] { 0x6cb8e6, 0xc79ae6, 0x7fd0a0, 0xe0ac5c, 0xe88fb0, 0x9fb0ee }, 0xe8a25c, 0x8cc5b1, 0xb9acf0,
			0xff8a80, 0xf2c14e, 0x6fd3e6, 0x1f4a66);

	private final Map<Ink, Integer> colours = new EnumMap<>(Ink.class);

	Palette(int ground, int hull, int place, int placeEdge, int thing, int thingEdge, int text, int softText, int[] networks,
			int power, int serial, int radio, int error, int warning, int advice, int chosen) {
		put(Ink.GROUND, ground, hull, place, placeEdge, thing, thingEdge, text, softText);
		put(Ink.NETWORK_1, networks);
		put(Ink.POWER, power, serial, radio, error, warning, advice, chosen);
	}

	private void put(Ink first, int... inOrder) {
		for (int i = 0; i < inOrder.length; i++) {
			colours.put(Ink.values()[first.ordinal() + i], inOrder[i]);
		}
	}

	/** The colour of an ink, 0xRRGGBB. */
	public int of(Ink ink) {
		return colours.get(ink);
	}
}
