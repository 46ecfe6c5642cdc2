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
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Collects shapes.
 */
final class Pencil {

	private final List<Shape> shapes = new ArrayList<>();

	List<Shape> shapes() {
		return List.copyOf(shapes);
	}

	void add(Shape shape) {
		shapes.add(shape);
	}

	void line(Stroke stroke, double x1, double y1, double x2, double y2) {
		add(new Shape.Run(List.of(new Point(x1, y1), new Point(x2, y2)), stroke));
	}

	void run(Stroke stroke, List<Point> points) {
		add(new Shape.Run(points, stroke));
	}

	void box(double x, double y, double width, double height, double radius, Ink fill, Stroke edge) {
		add(new Shape.Box(new Extent(x, y, width, height), radius, Optional.ofNullable(fill), Optional.ofNullable(edge)));
	}

	void disc(double x, double y, double radius, Ink fill, Stroke edge) {
		add(new Shape.Disc(new Point(x, y), radius, Optional.ofNullable(fill), Optional.ofNullable(edge)));
	}

	/** An area from pairs of coordinates. */
	void area(Ink fill, Stroke edge, double... coordinates) {
		List<Point> points = new ArrayList<>();
		for (int i = 0; i + 1 < coordinates.length; i += 2) {
			points.add(new Point(coordinates[i], coordinates[i + 1]));
		}
		add(new Shape.Area(points, Optional.ofNullable(fill), Optional.ofNullable(edge)));
	}

	void text(double x, double y, String text, double size, Ink ink) {
		add(new Shape.Words(new Point(x, y), text, size, false, Shape.Words.Align.START, ink));
	}

	void bold(double x, double y, String text, double size, Ink ink) {
		add(new Shape.Words(new Point(x, y), text, size, true, Shape.Words.Align.START, ink));
	}

	void centred(double x, double y, String text, double size, Ink ink) {
		add(new Shape.Words(new Point(x, y), text, size, false, Shape.Words.Align.MIDDLE, ink));
	}

	/**
	 * The mark of a finding. Each severity has a shape of its own: a square that stands on its corner, a triangle, a circle; with
	 * a letter.
	 */
	void mark(double x, double y, Severity severity) {
		Ink ink = ink(severity);
		Stroke edge = Stroke.of(Ink.GROUND, 1.5);
		switch (severity) {
		case ERROR -> area(ink, edge, x, y - 10, x + 10, y, x, y + 10, x - 10, y);
		case WARNING -> area(ink, edge, x, y - 10, x + 10, y + 8, x - 10, y + 8);
		case ADVICE -> disc(x, y, 8, ink, edge);
		}
		add(new Shape.Words(new Point(x, y + (severity == Severity.WARNING ? 6 : 4)), severity == Severity.ADVICE ? "i" : "!", 12, true,
				Shape.Words.Align.MIDDLE, Ink.GROUND));
	}

	static Ink ink(Severity severity) {
		return switch (severity) {
		case ERROR -> Ink.ERROR;
		case WARNING -> Ink.WARNING;
		case ADVICE -> Ink.ADVICE;
		};
	}
}
