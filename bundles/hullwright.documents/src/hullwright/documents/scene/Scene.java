/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A whole picture.
 *
 * @param title what it shows
 * @param width its width
 * @param height its height
 * @param shapes its shapes, from the ground up
 */
public record Scene(String title, double width, double height, List<Shape> shapes) {

	public Scene {
		shapes = List.copyOf(shapes);
	}

	/** What lies on top at a place, if anything there stands for an element. */
	public Optional<Shape.Thing> at(double x, double y) {
		return at(shapes, x, y);
	}

	private static Optional<Shape.Thing> at(List<Shape> shapes, double x, double y) {
		for (int i = shapes.size() - 1; i >= 0; i--) {
			if (shapes.get(i) instanceof Shape.Thing thing && thing.extent().contains(x, y)) {
				return at(thing.shapes(), x, y).or(() -> Optional.of(thing));
			}
		}
		return Optional.empty();
	}

	/** All that stands for elements, in the order in which it is drawn. */
	public List<Shape.Thing> things() {
		List<Shape.Thing> things = new ArrayList<>();
		collect(shapes, things);
		return things;
	}

	private static void collect(List<Shape> shapes, List<Shape.Thing> things) {
		for (Shape shape : shapes) {
			if (shape instanceof Shape.Thing thing) {
				things.add(thing);
				collect(thing.shapes(), things);
			}
		}
	}
}
