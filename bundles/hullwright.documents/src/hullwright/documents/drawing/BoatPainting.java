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
import hullwright.network.layout.Bulkhead;
import hullwright.network.layout.Place;
import java.util.Optional;

/**
 * Draws the boat under the network: its body, its places, its bulkheads.
 */
final class BoatPainting {

	private final Sketch sketch;
	private final Marks marks;

	BoatPainting(Sketch sketch, Marks marks) {
		this.sketch = sketch;
		this.marks = marks;
	}

	void draw(Pencil page) {
		if (sketch.grid.all().stream().anyMatch(place -> place.place.isPresent())) {
			body(page);
		}
		sketch.grid.all().forEach(place -> place(place, page));
		sketch.boat.layout().bulkheads().forEach(wall -> bulkhead(wall, page));
	}

	/** The lowest deck in a body with its bow to the left. */
	private void body(Pencil page) {
		Extent deck = null;
		for (DrawnPlace place : sketch.grid.all()) {
			if (place.row == 0) {
				deck = deck == null ? place.extent : deck.with(place.extent);
			}
		}
		double top = deck.y() - 6;
		double keel = deck.bottom() + 22;
		page.area(Ink.HULL, Stroke.of(Ink.PLACE_EDGE, 1.5), deck.x() - 70, top, deck.right() + 22, top, deck.right() + 12, keel - 8,
				deck.right() - 6, keel, deck.x() + 10, keel, deck.x() - 24, keel - 26);
		page.text(deck.x() - 52, top + 16, "bow", 11, Ink.SOFT_TEXT);
		page.add(new Shape.Words(new Point(deck.right() - 8, keel - 6), "stern", 11, false, Shape.Words.Align.END, Ink.SOFT_TEXT));
	}

	private void place(DrawnPlace place, Pencil page) {
		Pencil pencil = new Pencil();
		Extent at = place.extent;
		pencil.box(at.x(), at.y(), at.width(), at.height(), 4, Ink.PLACE, Stroke.of(Ink.PLACE_EDGE, 1));
		pencil.bold(at.x() + 10, at.y() + 17, place.title, 13, Ink.TEXT);
		String zones = place.zones();
		String name = place.place.map(Place::origin).map(origin -> origin.element()).orElse("");
		if (!zones.isEmpty()) {
			pencil.add(new Shape.Words(new Point(at.right() - 10, at.y() + 17), zones, 10, false, Shape.Words.Align.END, Ink.SOFT_TEXT));
		}
		if (!name.isEmpty()) {
			marks.at(name).ifPresent(severity -> pencil.mark(at.right() - 4, at.y() + 4, severity));
			page.add(new Shape.Thing(name, place.title + (zones.isEmpty() ? "" : ": " + zones) + marks.messages(name), new Extent(at.x(), at.y(), at.width(), SketchLayout.TITLE),
					pencil.shapes()));
		} else {
			pencil.shapes().forEach(page::add);
		}
	}

	private void bulkhead(Bulkhead wall, Pencil page) {
		Optional<DrawnPlace> one = drawn(wall.between());
		Optional<DrawnPlace> other = drawn(wall.and());
		if (one.isPresent() && other.isPresent() && one.get().row == other.get().row && one.get().column != other.get().column) {
			// where places without walls lie between, the wall stands at the one that the text names first
			boolean aft = one.get().column < other.get().column;
			Extent left = one.get().extent;
			double x = aft ? left.right() + 8 : left.x() - 8;
			Pencil pencil = new Pencil();
			pencil.line(new Stroke(Ink.THING_EDGE, wall.watertight() ? 3 : 1.5, Stroke.Dash.NONE), x, left.y() + 2, x, left.bottom() - 2);
			String title = wall.title().isEmpty() ? wall.name() : wall.title();
			marks.at(wall.origin().element()).ifPresent(severity -> pencil.mark(x, left.y() + 12, severity));
			page.add(new Shape.Thing(wall.origin().element(), "bulkhead " + title + (wall.watertight() ? ", watertight" : "") + marks.messages(wall.origin().element()),
					new Extent(x - 5, left.y(), 10, left.height()), pencil.shapes()));
		}
	}

	private Optional<DrawnPlace> drawn(String name) {
		return sketch.grid.all().stream().filter(place -> place.name.equals(name)).findFirst();
	}
}
