/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Ink;
import hullwright.documents.scene.Point;
import hullwright.documents.scene.Shape;
import hullwright.documents.scene.Stroke;
import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.part.FeedThrough;
import hullwright.quantity.Length;
import java.util.List;

/**
 * Draws drops, joins, serial lines and radio links.
 */
final class LinePainting {

	private static final double LEG_STEP = 14;

	private final Marks marks;
	private final Margins margins;

	LinePainting(Margins margins, Marks marks) {
		this.margins = margins;
		this.marks = marks;
	}

	void draw(Connection line, Pencil page) {
		Pencil pencil = new Pencil();
		Ink ink = ink(line);
		pencil.run(stroke(line, ink), line.course);
		List<Point> label = LevelStretch.of(line.course);
		if (line.kind == Connection.Kind.DROP || line.kind == Connection.Kind.JOIN) {
			legs(line, ink, pencil, label);
		}
		String name = CardFace.simpleName(line.element);
		if (line.kind == Connection.Kind.SERIAL || line.kind == Connection.Kind.RADIO) {
			page.add(thing(line, line.element, what(line) + name + marks.messages(line.element), pencil, label));
			mark(line, page, label);
		} else {
			page.add(thing(line, line.element, what(line) + name + lengths(line) + (line.kind == Connection.Kind.JOIN ? marks.messages(line.element) : ""), pencil, label));
			if (line.kind == Connection.Kind.JOIN) {
				mark(line, page, label);
			}
		}
	}

	private void mark(Connection line, Pencil page, List<Point> on) {
		marks.at(line.element).ifPresent(severity -> page.mark((on.get(0).x() + on.get(1).x()) / 2, on.get(0).y(), severity));
	}

	private static Shape.Thing thing(Connection line, String element, String tip, Pencil pencil, List<Point> on) {
		Extent along = new Shape.Run(on, Stroke.of(Ink.TEXT, 1)).extent().grown(5);
		return new Shape.Thing(element, tip, along, pencil.shapes());
	}

	private static Stroke stroke(Connection line, Ink ink) {
		return switch (line.kind) {
		case DROP, JOIN -> Stroke.of(ink, 1.6);
		case SERIAL -> new Stroke(ink, 1.6, Stroke.Dash.LONG);
		case RADIO -> new Stroke(ink, 1.8, Stroke.Dash.DOTS);
		};
	}

	private static Ink ink(Connection line) {
		return switch (line.kind) {
		case DROP, JOIN -> Ink.ofNetwork(line.network);
		case SERIAL -> Ink.SERIAL;
		case RADIO -> Ink.RADIO;
		};
	}

	private static String what(Connection line) {
		return switch (line.kind) {
		case DROP -> "drop ";
		case JOIN -> "joint ";
		case SERIAL -> "serial line ";
		case RADIO -> "radio link ";
		};
	}

	/** What lies in a drop, on its last straight stretch: the length of its cables, and a sign for every other part. */
	private void legs(Connection line, Ink ink, Pencil pencil, List<Point> on) {
		double y = on.get(0).y();
		double x = Math.min(on.get(0).x(), on.get(1).x()) + 4;
		String length = total(line.legs);
		double partsFrom = Math.max(on.get(0).x(), on.get(1).x()) - 10;
		if (line.isShort()) {
			double labelX = Math.max(x, line.stop.right() + 4);
			pencil.text(labelX, y - 3, length, 9, Ink.SOFT_TEXT);
		} else {
			pencil.text(x + 4, y - 3, length, 9, Ink.SOFT_TEXT);
		}
		List<Element> legs = line.legs;
		for (int i = legs.size() - 1; i >= 0; i--) {
			if (legs.get(i) instanceof Fitting fitting) {
				Pencil symbol = new Pencil();
				if (fitting.part() instanceof FeedThrough) {
					PartSymbol.wall(symbol, partsFrom, y);
				} else {
					PartSymbol.adapter(symbol, partsFrom, y, ink);
				}
				double at = partsFrom;
				marks.at(fitting.name()).ifPresent(severity -> symbol.mark(at, y - 12, severity));
				pencil.add(new Shape.Thing(fitting.name(), CardFace.simpleName(fitting.name()) + ", " + CardFace.title(fitting.part().identity()) + marks.messages(fitting.name()),
						new Extent(partsFrom - 7, y - 8, 14, 16), symbol.shapes()));
				partsFrom -= LEG_STEP;
			}
		}
	}

	private String lengths(Connection line) {
		StringBuilder text = new StringBuilder();
		for (Element leg : line.legs) {
			if (leg instanceof CableRun cable) {
				text.append('\n').append(cable.length()).append(cable.cable().map(data -> " of " + CardFace.title(data.identity())).orElse(""));
				margins.ofCableInFull(cable.name()).ifPresent(current -> text.append(", ").append(current));
			}
		}
		return text.toString();
	}

	private static String total(List<Element> legs) {
		Length total = Length.ZERO;
		for (Element leg : legs) {
			total = leg instanceof CableRun cable ? total.plus(cable.length()) : total;
		}
		return total.si() == 0 ? "" : total.toString();
	}
}
