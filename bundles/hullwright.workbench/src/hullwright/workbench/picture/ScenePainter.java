/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.picture;

import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Ink;
import hullwright.documents.scene.Palette;
import hullwright.documents.scene.Point;
import hullwright.documents.scene.Scene;
import hullwright.documents.scene.Shape;
import hullwright.documents.scene.Stroke;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Transform;

/**
 * Paints a picture on whatever a graphics context draws on: a window, an image, a printer. Keeps fonts until it is disposed of.
 */
final class ScenePainter {

	private final Device device;
	private final Palette palette;
	private final String face;
	private final double pointsPerUnit;
	private final Map<String, Font> fonts = new HashMap<>();

	/**
	 * @param dotsPerInch how fine the device says it is, since fonts are measured in points of 1/72 inch
	 */
	ScenePainter(Device device, Palette palette, String face, int dotsPerInch) {
		this.device = device;
		this.palette = palette;
		this.face = face;
		pointsPerUnit = 72.0 / dotsPerInch;
	}

	void dispose() {
		fonts.values().forEach(Font::dispose);
		fonts.clear();
	}

	/**
	 * Paints.
	 *
	 * @param originX where the picture's left side is, in dots
	 * @param originY where its upper side is, in dots
	 * @param zoom dots for each unit of the picture
	 * @param visible what of the picture is to be seen; the rest is passed over
	 * @param chosen the elements that are chosen
	 */
	void paint(GC gc, Scene scene, double originX, double originY, double zoom, Extent visible, Set<String> chosen) {
		Transform before = new Transform(device);
		Transform transform = new Transform(device);
		try {
			gc.setAdvanced(true);
			gc.setAntialias(SWT.ON);
			gc.setTextAntialias(SWT.ON);
			gc.getTransform(before);
			gc.getTransform(transform);
			transform.translate((float) originX, (float) originY);
			transform.scale((float) zoom, (float) zoom);
			gc.setTransform(transform);
			shapes(gc, scene.shapes(), visible, chosen);
		} finally {
			gc.setTransform(before);
			transform.dispose();
			before.dispose();
		}
	}

	private void halo(GC gc, Extent at) {
		Extent wide = at.grown(5);
		gc.setBackground(colour(Ink.CHOSEN));
		gc.setForeground(colour(Ink.NETWORK_1));
		gc.fillRoundRectangle((int) wide.x(), (int) wide.y(), (int) wide.width(), (int) wide.height(), 10, 10);
		gc.setLineAttributes(new LineAttributes(1.5f));
		gc.drawRoundRectangle((int) wide.x(), (int) wide.y(), (int) wide.width(), (int) wide.height(), 10, 10);
	}

	private void shapes(GC gc, List<Shape> shapes, Extent visible, Set<String> chosen) {
		for (Shape shape : shapes) {
			if (shape instanceof Shape.Thing thing) {
				// on what lies under it, and under what it consists of
				if (chosen.contains(thing.element())) {
					halo(gc, thing.extent());
				}
				shapes(gc, thing.shapes(), visible, chosen);
			} else if (meets(shape.extent(), visible)) {
				shape(gc, shape);
			}
		}
	}

	private static boolean meets(Extent extent, Extent visible) {
		return extent.x() <= visible.right() && extent.right() >= visible.x() && extent.y() <= visible.bottom() && extent.bottom() >= visible.y();
	}

	private void shape(GC gc, Shape shape) {
		if (shape instanceof Shape.Run run) {
			path(gc, run.points(), false, Optional.empty(), Optional.of(run.stroke()));
		} else if (shape instanceof Shape.Area area) {
			path(gc, area.points(), true, area.fill(), area.edge());
		} else if (shape instanceof Shape.Box box) {
			box(gc, box);
		} else if (shape instanceof Shape.Disc disc) {
			disc(gc, disc);
		} else if (shape instanceof Shape.Words words) {
			words(gc, words);
		}
	}

	private void path(GC gc, List<Point> points, boolean closed, Optional<Ink> fill, Optional<Stroke> edge) {
		Path path = new Path(device);
		path.moveTo((float) points.get(0).x(), (float) points.get(0).y());
		points.stream().skip(1).forEach(point -> path.lineTo((float) point.x(), (float) point.y()));
		if (closed) {
			path.close();
		}
		draw(gc, path, fill, edge);
	}

	private void box(GC gc, Shape.Box box) {
		Extent at = box.extent();
		float x = (float) at.x();
		float y = (float) at.y();
		float right = (float) at.right();
		float bottom = (float) at.bottom();
		float radius = (float) Math.min(box.radius(), Math.min(at.width(), at.height()) / 2);
		Path path = new Path(device);
		if (radius <= 0) {
			path.addRectangle(x, y, (float) at.width(), (float) at.height());
		} else {
			path.addArc(right - 2 * radius, y, 2 * radius, 2 * radius, 90, -90);
			path.addArc(right - 2 * radius, bottom - 2 * radius, 2 * radius, 2 * radius, 0, -90);
			path.addArc(x, bottom - 2 * radius, 2 * radius, 2 * radius, 270, -90);
			path.addArc(x, y, 2 * radius, 2 * radius, 180, -90);
			path.close();
		}
		draw(gc, path, box.fill(), box.edge());
	}

	private void disc(GC gc, Shape.Disc disc) {
		float radius = (float) disc.radius();
		Path path = new Path(device);
		path.addArc((float) disc.centre().x() - radius, (float) disc.centre().y() - radius, 2 * radius, 2 * radius, 0, 360);
		path.close();
		draw(gc, path, disc.fill(), disc.edge());
	}

	private void draw(GC gc, Path path, Optional<Ink> fill, Optional<Stroke> edge) {
		try {
			fill.ifPresent(ink -> {
				gc.setBackground(colour(ink));
				gc.fillPath(path);
			});
			edge.ifPresent(stroke -> {
				gc.setForeground(colour(stroke.ink()));
				gc.setLineAttributes(attributes(stroke));
				gc.drawPath(path);
			});
		} finally {
			path.dispose();
		}
	}

	private static LineAttributes attributes(Stroke stroke) {
		double[] pieces = stroke.dash().pieces();
		float[] dashes = new float[pieces.length];
		for (int i = 0; i < pieces.length; i++) {
			dashes[i] = (float) (pieces[i] * stroke.width());
		}
		return new LineAttributes((float) stroke.width(), SWT.CAP_FLAT, SWT.JOIN_ROUND, dashes.length == 0 ? SWT.LINE_SOLID : SWT.LINE_CUSTOM,
				dashes.length == 0 ? null : dashes, 0, 10);
	}

	private void words(GC gc, Shape.Words words) {
		if (!words.upwards()) {
			line(gc, words);
			return;
		}
		Transform before = new Transform(device);
		Transform turned = new Transform(device);
		gc.getTransform(before);
		gc.getTransform(turned);
		turned.translate((float) words.at().x(), (float) words.at().y());
		turned.rotate(-90);
		gc.setTransform(turned);
		line(gc, new Shape.Words(new Point(0, 0), words.text(), words.size(), words.bold(), words.align(), words.ink()));
		gc.setTransform(before);
		turned.dispose();
		before.dispose();
	}

	private void line(GC gc, Shape.Words words) {
		gc.setFont(font(words.size(), words.bold()));
		gc.setForeground(colour(words.ink()));
		int width = words.align() == Shape.Words.Align.START ? 0 : gc.textExtent(words.text(), SWT.DRAW_TRANSPARENT).x;
		double x = switch (words.align()) {
		case START -> words.at().x();
		case MIDDLE -> words.at().x() - width / 2.0;
		case END -> words.at().x() - width;
		};
		gc.drawText(words.text(), (int) Math.round(x), (int) Math.round(words.at().y() - gc.getFontMetrics().getAscent() - gc.getFontMetrics().getLeading()),
				SWT.DRAW_TRANSPARENT);
	}

	private Font font(double size, boolean bold) {
		return fonts.computeIfAbsent(size + (bold ? "b" : ""), key -> {
			FontData data = new FontData(face, 1, bold ? SWT.BOLD : SWT.NORMAL);
			data.height = (float) (size * pointsPerUnit);
			return new Font(device, data);
		});
	}

	private Color colour(Ink ink) {
		int value = palette.of(ink);
		return new Color(value >> 16 & 0xff, value >> 8 & 0xff, value & 0xff);
	}
}
