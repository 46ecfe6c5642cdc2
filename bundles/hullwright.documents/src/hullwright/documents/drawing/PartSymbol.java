/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Ink;
import hullwright.documents.scene.Stroke;
import hullwright.network.part.Adapter;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.FeedThrough;
import hullwright.network.part.Isolator;
import hullwright.network.part.Part;
import hullwright.network.part.Tap;
import hullwright.network.part.Tee;
import hullwright.network.part.Terminator;

/**
 * The symbols of the parts of a backbone. Each tells by its shape what the part does with the line that comes in.
 */
enum PartSymbol {
	/** A half disc that closes the line. */
	TERMINATOR,
	/** A box that the line runs through, with ports along its upper edge. */
	TEE,
	/** A box that opens downwards, where the supply comes in. */
	TAP,
	/** Two halves with a gap. */
	ISOLATOR,
	/** Two short walls that the line runs through. */
	WALL,
	/** A lozenge. */
	ADAPTER,
	/** A box with sharp corners. */
	DEVICE,
	/** A ring. */
	OTHER;

	private static final double HALF = Stop.HEIGHT / 2;

	static PartSymbol of(Part part) {
		if (part instanceof Terminator) {
			return TERMINATOR;
		} else if (part instanceof Tee) {
			return TEE;
		} else if (part instanceof Tap) {
			return TAP;
		} else if (part instanceof Isolator) {
			return ISOLATOR;
		} else if (part instanceof FeedThrough) {
			return WALL;
		} else if (part instanceof Adapter) {
			return ADAPTER;
		}
		return part instanceof DeviceModel ? DEVICE : OTHER;
	}

	/**
	 * Draws it.
	 *
	 * @param x its middle
	 * @param y the height of the line
	 * @param width its width
	 * @param ink the colour of its network
	 * @param openRight whether the line comes in from the right; counts for what ends a line
	 */
	void draw(Pencil pencil, double x, double y, double width, Ink ink, boolean openRight) {
		Stroke edge = Stroke.of(ink, 2);
		double half = width / 2;
		switch (this) {
		case TERMINATOR -> terminator(pencil, x, y, ink, openRight);
		case TEE -> {
			pencil.box(x - half, y - HALF, width, Stop.HEIGHT, 5, Ink.THING, edge);
			pencil.line(Stroke.of(ink, 4), x - half, y, x + half, y);
		}
		case TAP -> {
			pencil.area(Ink.THING, edge, x - 12, y - HALF, x + 12, y - HALF, x + 12, y + 4, x, y + HALF + 5, x - 12, y + 4);
			pencil.line(Stroke.of(ink, 4), x - 12, y, x + 12, y);
		}
		case ISOLATOR -> {
			pencil.box(x - 12, y - HALF, 9, Stop.HEIGHT, 0, Ink.THING, edge);
			pencil.box(x + 3, y - HALF, 9, Stop.HEIGHT, 0, Ink.THING, edge);
		}
		case WALL -> {
			pencil.line(Stroke.of(ink, 4), x - half, y, x + half, y);
			pencil.box(x - 4, y - HALF - 5, 3, Stop.HEIGHT + 10, 0, Ink.THING_EDGE, null);
			pencil.box(x + 1, y - HALF - 5, 3, Stop.HEIGHT + 10, 0, Ink.THING_EDGE, null);
		}
		case ADAPTER -> {
			pencil.line(Stroke.of(ink, 4), x - half, y, x + half, y);
			adapter(pencil, x, y, ink);
		}
		case DEVICE -> pencil.box(x - half, y - HALF, width, Stop.HEIGHT, 0, Ink.THING, edge);
		case OTHER -> pencil.disc(x, y, HALF - 3, Ink.THING, edge);
		}
	}

	private static void terminator(Pencil pencil, double x, double y, Ink ink, boolean openRight) {
		double side = openRight ? 1 : -1;
		double[] corners = new double[22];
		for (int i = 0; i <= 10; i++) {
			double angle = Math.PI * i / 10;
			corners[2 * i] = x + side * 8 - side * 17 * Math.sin(angle);
			corners[2 * i + 1] = y - HALF * Math.cos(angle);
		}
		pencil.area(ink, Stroke.of(ink, 2), corners);
		pencil.line(Stroke.of(ink, 4), x + side * 8, y, x + side * 12, y);
	}

	/** A lozenge. Small enough to sit on a drop, too. */
	static void adapter(Pencil pencil, double x, double y, Ink ink) {
		pencil.area(Ink.THING, Stroke.of(ink, 1.5), x, y - 6, x + 6, y, x, y + 6, x - 6, y);
	}

	/** Two short walls, on a drop. */
	static void wall(Pencil pencil, double x, double y) {
		pencil.box(x - 4, y - 8, 2.5, 16, 0, Ink.THING_EDGE, null);
		pencil.box(x + 1, y - 8, 2.5, 16, 0, Ink.THING_EDGE, null);
	}

	/** Earth, as IEC 60617 draws it. */
	static void earth(Pencil pencil, double x, double y) {
		Stroke stroke = Stroke.of(Ink.THING_EDGE, 1.5);
		pencil.line(stroke, x, y - 8, x, y);
		pencil.line(stroke, x - 7, y, x + 7, y);
		pencil.line(stroke, x - 4.5, y + 3, x + 4.5, y + 3);
		pencil.line(stroke, x - 2, y + 6, x + 2, y + 6);
	}
}
