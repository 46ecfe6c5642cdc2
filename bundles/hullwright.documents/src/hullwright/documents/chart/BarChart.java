/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.chart;

import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Ink;
import hullwright.documents.scene.LetterWidths;
import hullwright.documents.scene.Point;
import hullwright.documents.scene.Scene;
import hullwright.documents.scene.Shape;
import hullwright.documents.scene.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Bars of how much of a limit is used: all of the limit is one full length, so that bars of different limits compare. What goes
 * beyond is drawn to a quarter more and says how much it is.
 */
final class BarChart {

	private static final double MARGIN = 20;
	private static final double ROW = 22;
	private static final double BAR = 13;
	private static final double FULL = 360;
	private static final double MOST = 1.25;
	private static final double SIZE = 11;
	private static final double MOST_NAME = 300;

	/**
	 * A bar.
	 *
	 * @param element the qualified name of what it is about
	 * @param name what is written before it
	 * @param share which part of the limit is used; 1 is all of it. None where there is no limit
	 * @param more which part more may be used at times
	 * @param value what is written behind it
	 * @param ink its colour
	 */
	record Bar(String element, String name, Optional<Double> share, double more, String value, Ink ink) {
	}

	private final String title;
	private final String scale;
	private final List<Bar> bars;
	private final double mark;

	/**
	 * @param scale what a full length means
	 * @param mark a share to draw a second line at, such as what practice allows; 1 or more for none
	 */
	BarChart(String title, String scale, List<Bar> bars, double mark) {
		this.title = title;
		this.scale = scale;
		this.bars = List.copyOf(bars);
		this.mark = mark;
	}

	Scene scene() {
		List<Shape> shapes = new ArrayList<>();
		double names = bars.stream().mapToDouble(bar -> LetterWidths.of(bar.name(), SIZE, false)).max().orElse(0);
		double left = MARGIN + Math.min(MOST_NAME, names) + 12;
		shapes.add(new Shape.Words(new Point(MARGIN, MARGIN + 14), title, 15, true, Shape.Words.Align.START, Ink.TEXT));
		double top = MARGIN + 48;
		double bottom = top + bars.size() * ROW;
		axis(shapes, left, top, bottom);
		double y = top;
		double right = left + MOST * FULL;
		for (Bar bar : bars) {
			shapes.add(row(bar, left, y));
			right = Math.max(right, valueAt(bar, left) + LetterWidths.of(bar.value(), SIZE, false));
			y += ROW;
		}
		return new Scene(title, Math.max(right, MARGIN + LetterWidths.of(title, 15, true)) + MARGIN, bottom + MARGIN, shapes);
	}

	private void axis(List<Shape> shapes, double left, double top, double bottom) {
		for (int percent = 0; percent <= 100; percent += 25) {
			double x = left + FULL * percent / 100;
			boolean limit = percent == 100;
			shapes.add(line(x, top - 6, x, bottom, limit ? new Stroke(Ink.ERROR, 1.5, Stroke.Dash.NONE) : Stroke.of(Ink.PLACE_EDGE, 1)));
			shapes.add(new Shape.Words(new Point(x, top - 10), limit ? scale : percent + " %", 10, false, limit ? Shape.Words.Align.START : Shape.Words.Align.MIDDLE,
					limit ? Ink.ERROR : Ink.SOFT_TEXT));
		}
		if (mark < 1) {
			double x = left + FULL * mark;
			shapes.add(line(x, top - 6, x, bottom, new Stroke(Ink.WARNING, 1.5, Stroke.Dash.SHORT)));
		}
	}

	private Shape row(Bar bar, double left, double y) {
		List<Shape> shapes = new ArrayList<>();
		String name = LetterWidths.fit(bar.name(), SIZE, false, MOST_NAME);
		shapes.add(new Shape.Words(new Point(left - 8, y + BAR), name, SIZE, false, Shape.Words.Align.END, Ink.TEXT));
		bar.share().ifPresent(share -> {
			double length = FULL * Math.min(MOST, Math.max(0, share));
			boolean over = share + bar.more() > 1;
			shapes.add(new Shape.Box(new Extent(left, y + 2, length, BAR), 0, Optional.of(over ? Ink.ERROR : bar.ink()), Optional.empty()));
			if (bar.more() > 0) {
				double more = FULL * Math.min(MOST, share + bar.more()) - length;
				shapes.add(new Shape.Box(new Extent(left + length, y + 2, Math.max(0, more), BAR), 0, Optional.of(Ink.THING),
						Optional.of(new Stroke(over ? Ink.ERROR : bar.ink(), 1.2, Stroke.Dash.SHORT))));
			}
		});
		double at = valueAt(bar, left);
		shapes.add(new Shape.Words(new Point(at, y + BAR), bar.value(), SIZE, false, Shape.Words.Align.START, Ink.SOFT_TEXT));
		String tip = bar.name() + "\n" + bar.value() + bar.share().map(share -> String.format(Locale.ROOT, "\n%.0f %%", 100 * (share + bar.more()))).orElse("");
		return new Shape.Thing(bar.element(), tip, new Extent(MARGIN, y, at + 200 - MARGIN, ROW), shapes);
	}

	private static double valueAt(Bar bar, double left) {
		return left + FULL * Math.min(MOST, bar.share().map(share -> Math.max(0, share + bar.more())).orElse(0.0)) + 8;
	}

	private static Shape line(double x1, double y1, double x2, double y2, Stroke stroke) {
		return new Shape.Run(List.of(new Point(x1, y1), new Point(x2, y2)), stroke);
	}
}
