/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Ink;
import hullwright.documents.scene.LetterWidths;
import hullwright.documents.scene.Point;
import hullwright.documents.scene.Shape;
import hullwright.documents.scene.Stroke;
import hullwright.network.CableRun;
import hullwright.network.power.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Draws a backbone: its cables with their lengths and currents, its parts with their ports, and the supplies that enter it.
 */
final class TrunkPainting {

	private static final double THICK = 4;
	private static final double LABEL = 11;
	private static final double SMALL = 9;
	private static final double LOOSE_END = 48;

	private final Margins margins;
	private final Marks marks;
	private final Map<String, Supply> supplies;

	TrunkPainting(Sketch sketch, Margins margins, Marks marks) {
		this.margins = margins;
		this.marks = marks;
		supplies = sketch.boat.power().supplies().stream().collect(Collectors.toMap(Supply::name, Function.identity(), (one, other) -> one));
	}

	void draw(Trunk trunk, Pencil page) {
		Ink ink = Ink.ofNetwork(trunk.network);
		for (Stay stay : trunk.stays) {
			for (int i = 1; i < stay.stops.size(); i++) {
				Stop from = stay.stops.get(i - 1);
				Stop to = stay.stops.get(i);
				cables(to.before, List.of(new Point(stay.rightwards ? from.right() : from.left(), from.y),
						new Point(stay.rightwards ? to.left() : to.right(), to.y)), ink, page);
			}
		}
		trunk.crossings.forEach(crossing -> cables(crossing.to.first().before, crossing.course, ink, page));
		looseEnd(trunk.stays.get(0), true, trunk.stays.get(0).first().before, ink, page);
		looseEnd(trunk.stays.get(trunk.stays.size() - 1), false, trunk.trailing, ink, page);
		trunk.stays.forEach(stay -> stay.stops.forEach(stop -> stop(trunk, stay, stop, ink, page)));
	}

	/** Cable that ends in nothing, with a gap in the shape of an open ring. */
	private void looseEnd(Stay stay, boolean start, List<CableRun> cables, Ink ink, Pencil page) {
		if (cables.isEmpty()) {
			return;
		}
		Stop stop = start ? stay.first() : stay.last();
		boolean toLeft = start == stay.rightwards;
		double from = toLeft ? stop.left() : stop.right();
		double to = toLeft ? from - LOOSE_END : from + LOOSE_END;
		cables(cables, List.of(new Point(from, stop.y), new Point(to, stop.y)), ink, page);
		page.disc(to + (toLeft ? -5 : 5), stop.y, 5, Ink.GROUND, new Stroke(ink, 2, Stroke.Dash.SHORT));
	}

	/** The cables between two parts share the way between them; on it each has its piece. */
	private void cables(List<CableRun> cables, List<Point> course, Ink ink, Pencil page) {
		if (cables.isEmpty()) {
			page.run(Stroke.of(ink, THICK), course);
			return;
		}
		List<Point> on = LevelStretch.of(course);
		page.run(Stroke.of(ink, THICK), course);
		double from = Math.min(on.get(0).x(), on.get(1).x());
		double to = Math.max(on.get(0).x(), on.get(1).x());
		boolean backwards = course.get(0).x() > course.get(course.size() - 1).x();
		double piece = (to - from) / cables.size();
		for (int i = 0; i < cables.size(); i++) {
			CableRun cable = cables.get(backwards ? cables.size() - 1 - i : i);
			cable(cable, from + i * piece, from + (i + 1) * piece, on.get(0).y(), ink, page);
			if (i > 0) {
				page.line(Stroke.of(ink, 1.5), from + i * piece, on.get(0).y() - 7, from + i * piece, on.get(0).y() + 7);
			}
		}
	}

	private void cable(CableRun cable, double from, double to, double y, Ink ink, Pencil page) {
		Pencil pencil = new Pencil();
		double middle = (from + to) / 2;
		pencil.line(Stroke.of(ink, THICK), from, y, to, y);
		pencil.centred(middle, y - 6, cable.length().toString(), LABEL, Ink.TEXT);
		margins.ofCable(cable.name()).ifPresent(current -> pencil.centred(middle, y + 13, current, SMALL, Ink.SOFT_TEXT));
		marks.at(cable.name()).ifPresent(severity -> pencil.mark(middle + 22, y - 10, severity));
		String tip = CardFace.simpleName(cable.name()) + ", " + cable.length()
				+ cable.cable().map(data -> " of " + CardFace.title(data.identity())).orElse("")
				+ margins.ofCableInFull(cable.name()).map(current -> "\n" + current).orElse("") + marks.messages(cable.name());
		page.add(new Shape.Thing(cable.name(), tip, new Extent(from, y - 16, to - from, 32), pencil.shapes()));
	}

	private void stop(Trunk trunk, Stay stay, Stop stop, Ink ink, Pencil page) {
		Pencil pencil = new Pencil();
		boolean first = trunk.stays.get(0).first() == stop;
		PartSymbol.of(stop.fitting.part()).draw(pencil, stop.x, stop.y, stop.width(), ink, first == stay.rightwards);
		for (Stop.Port port : stop.ports) {
			port(port, stop, ink, pencil);
		}
		supplies(stop, pencil);
		if (stop.fitting.details().earthsShield()) {
			PartSymbol.earth(pencil, stop.right() + 6, stop.bottom() + 10);
			pencil.line(Stroke.of(Ink.THING_EDGE, 1.5), stop.right() - 3, stop.y + 6, stop.right() + 6, stop.bottom() + 2);
		}
		marks.at(stop.fitting.name()).ifPresent(severity -> pencil.mark(stop.left() - 2, stop.bottom() + 4, severity));
		String name = CardFace.simpleName(stop.fitting.name());
		double room = Math.max(stop.width(), LetterWidths.of(name, SMALL, false));
		if (stop.supplies().isEmpty()) {
			pencil.centred(stop.x, stop.bottom() + 11, name, SMALL, Ink.SOFT_TEXT);
		}
		page.add(new Shape.Thing(stop.fitting.name(), tip(stop), new Extent(stop.x - room / 2, stop.top() - 6, room, Stop.HEIGHT + 20), pencil.shapes()));
	}

	private String tip(Stop stop) {
		StringBuilder tip = new StringBuilder(CardFace.simpleName(stop.fitting.name())).append(", ").append(CardFace.title(stop.fitting.part().identity()));
		if (!stop.fitting.details().label().isEmpty()) {
			tip.append("\nlabel ").append(stop.fitting.details().label());
		}
		long free = stop.ports.stream().filter(port -> port.taken == null && !port.capped).count();
		if (!stop.ports.isEmpty()) {
			tip.append('\n').append(stop.ports.size()).append(stop.ports.size() == 1 ? " port" : " ports").append(", ").append(free).append(" free");
		}
		if (stop.fitting.details().earthsShield()) {
			tip.append("\nshield to earth here");
		}
		return tip + marks.messages(stop.fitting.name());
	}

	/** A port that is taken is full, a capped one wears its cap, an open one is a ring. */
	private static void port(Stop.Port port, Stop stop, Ink ink, Pencil pencil) {
		double y = stop.top();
		if (port.taken != null) {
			pencil.disc(port.x, y, 3, ink, null);
		} else if (port.capped) {
			pencil.box(port.x - 3.5, y - 4, 7, 5, 1, Ink.THING_EDGE, null);
		} else {
			pencil.disc(port.x, y, 3, Ink.GROUND, Stroke.of(ink, 1.5));
		}
	}

	private void supplies(Stop stop, Pencil pencil) {
		List<String> names = new ArrayList<>(stop.supplies());
		double top = stop.place.extent.bottom() - SketchLayout.SUPPLY_HEIGHT - 8;
		double x = stop.x - names.size() * SketchLayout.SUPPLY_WIDTH / 2;
		for (String name : names) {
			double middle = x + SketchLayout.SUPPLY_WIDTH / 2;
			pencil.run(Stroke.of(Ink.POWER, 2), List.of(new Point(stop.x, stop.bottom() + 4), new Point(stop.x, top - 8), new Point(middle, top - 8),
					new Point(middle, top)));
			pencil.add(supply(name, stop, x + 4, top));
			x += SketchLayout.SUPPLY_WIDTH;
		}
	}

	private Shape supply(String name, Stop stop, double x, double y) {
		Pencil pencil = new Pencil();
		double width = SketchLayout.SUPPLY_WIDTH - 8;
		Supply supply = supplies.get(name);
		pencil.box(x, y, width, SketchLayout.SUPPLY_HEIGHT, 0, Ink.THING, Stroke.of(Ink.POWER, 1.5));
		pencil.box(x, y, 5, SketchLayout.SUPPLY_HEIGHT, 0, Ink.POWER, null);
		pencil.bold(x + 11, y + 15, LetterWidths.fit(CardFace.simpleName(name), LABEL, true, width - 16), LABEL, Ink.TEXT);
		String detail = detail(supply) + margins.ofEntry(name, stop.fitting.name()).map(current -> ", gives " + current).orElse("");
		pencil.text(x + 11, y + 30, LetterWidths.fit(detail, SMALL + 1, false, width - 16), SMALL + 1, Ink.SOFT_TEXT);
		marks.at(name).ifPresent(severity -> pencil.mark(x + width - 4, y + 4, severity));
		String title = supply == null || supply.title().isEmpty() ? "" : ", " + supply.title();
		return new Shape.Thing(name, "supply " + CardFace.simpleName(name) + title + (detail.isEmpty() ? "" : "\n" + detail) + marks.messages(name),
				new Extent(x, y, width, SketchLayout.SUPPLY_HEIGHT), pencil.shapes());
	}

	private static String detail(Supply supply) {
		if (supply == null) {
			return "";
		}
		List<String> parts = new ArrayList<>();
		supply.voltages().nominal().ifPresent(voltage -> parts.add(voltage.toString()));
		supply.fuse().ifPresent(fuse -> parts.add("fuse " + fuse.rating()));
		return String.join(", ", parts);
	}
}
