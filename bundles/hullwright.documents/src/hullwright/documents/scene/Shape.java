/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.scene;

import java.util.List;
import java.util.Optional;

/**
 * One shape of a picture. Later ones lie on top of earlier ones.
 */
public sealed interface Shape {

	/** The rectangle that it fills. */
	Extent extent();

	/**
	 * A line from point to point.
	 *
	 * @param points at least two
	 * @param stroke how it is drawn
	 */
	record Run(List<Point> points, Stroke stroke) implements Shape {
		public Run {
			points = List.copyOf(points);
		}

		@Override
		public Extent extent() {
			return around(points).grown(stroke.width() / 2);
		}
	}

	/**
	 * A closed area with straight edges.
	 *
	 * @param points its corners
	 * @param fill its colour, if it is filled
	 * @param edge its edge, if it has one
	 */
	record Area(List<Point> points, Optional<Ink> fill, Optional<Stroke> edge) implements Shape {
		public Area {
			points = List.copyOf(points);
		}

		@Override
		public Extent extent() {
			return around(points);
		}
	}

	/**
	 * A rectangle.
	 *
	 * @param extent where
	 * @param radius that of its corners, 0 for sharp ones
	 * @param fill its colour, if it is filled
	 * @param edge its edge, if it has one
	 */
	record Box(Extent extent, double radius, Optional<Ink> fill, Optional<Stroke> edge) implements Shape {
	}

	/**
	 * A circle.
	 *
	 * @param centre its centre
	 * @param radius its radius
	 * @param fill its colour, if it is filled
	 * @param edge its edge, if it has one
	 */
	record Disc(Point centre, double radius, Optional<Ink> fill, Optional<Stroke> edge) implements Shape {
		@Override
		public Extent extent() {
			return new Extent(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius);
		}
	}

	/**
	 * A line of text.
	 *
	 * @param at where its base line starts, has its middle, or ends
	 * @param text what is written
	 * @param size the height of its letters
	 * @param bold whether it is bold
	 * @param align what of it lies at that place
	 * @param ink its colour
	 * @param upwards whether it reads from the bottom up
	 */
	record Words(Point at, String text, double size, boolean bold, Align align, Ink ink, boolean upwards) implements Shape {
		/** A text that reads from left to right. */
		public Words(Point at, String text, double size, boolean bold, Align align, Ink ink) {
			this(at, text, size, bold, align, ink, false);
		}

		/** What of a text lies at its place. */
		public enum Align {
			/** Its start. */
			START,
			/** Its middle. */
			MIDDLE,
			/** Its end. */
			END
		}

		@Override
		public Extent extent() {
			double width = LetterWidths.of(text, size, bold);
			double left = switch (align) {
			case START -> at.x();
			case MIDDLE -> at.x() - width / 2;
			case END -> at.x() - width;
			};
			return upwards ? new Extent(at.x() - size * 0.8, at.y() - (left - at.x()) - width, size, width)
					: new Extent(left, at.y() - size * 0.8, width, size);
		}
	}

	/**
	 * The shapes that stand for one element of the boat.
	 *
	 * @param element its qualified name
	 * @param tip what is told about it when somebody points at it; lines with line feeds between
	 * @param extent where it may be pointed at
	 * @param shapes its shapes
	 */
	record Thing(String element, String tip, Extent extent, List<Shape> shapes) implements Shape {
		public Thing {
			shapes = List.copyOf(shapes);
		}
	}

	private static Extent around(List<Point> points) {
		double left = Double.POSITIVE_INFINITY;
		double top = Double.POSITIVE_INFINITY;
		double right = Double.NEGATIVE_INFINITY;
		double bottom = Double.NEGATIVE_INFINITY;
		for (Point point : points) {
			left = Math.min(left, point.x());
			right = Math.max(right, point.x());
			top = Math.min(top, point.y());
			bottom = Math.max(bottom, point.y());
		}
		return new Extent(left, top, right - left, bottom - top);
	}
}
