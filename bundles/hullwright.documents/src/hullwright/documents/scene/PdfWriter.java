/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.scene;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/**
 * Writes a picture as a PDF of one page, with the letters that it uses in it. The same picture gives the same bytes.
 */
public final class PdfWriter {

	/** The one typeface that PDFBox brings along; it covers Latin, Greek and Cyrillic. */
	private static final String TYPEFACE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

	/** A unit of the picture is that of SVG, 1/96 inch; one of PDF is 1/72 inch. */
	private static final float POINTS_PER_UNIT = 0.75f;

	/** How thick the line around bold letters is, in heights of the letters. */
	private static final float BOLD = 0.03f;

	/** Where a quarter of a circle is drawn by a Bézier curve, how far its inner points are, in radii: 4/3 (√2 − 1). */
	private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

	private final PDPageContentStream page;
	private final PDFont font;
	private final Palette palette;

	private PdfWriter(PDPageContentStream page, PDFont font, Palette palette) {
		this.page = page;
		this.font = font;
		this.palette = palette;
	}

	/** The picture as the bytes of a PDF file. */
	public static byte[] write(Scene scene, Palette palette) {
		try (PDDocument document = new PDDocument(); InputStream typeface = PDDocument.class.getResourceAsStream(TYPEFACE)) {
			// without an id of its own it would get one from the clock
			document.setDocumentId((long) SvgWriter.write(scene, palette).hashCode());
			document.getDocumentInformation().setTitle(scene.title());
			PDPage page = new PDPage(new PDRectangle((float) scene.width() * POINTS_PER_UNIT, (float) scene.height() * POINTS_PER_UNIT));
			document.addPage(page);
			PDFont font = PDType0Font.load(document, typeface);
			try (PDPageContentStream content = new PDPageContentStream(document, page)) {
				content.transform(new Matrix(POINTS_PER_UNIT, 0, 0, -POINTS_PER_UNIT, 0, (float) scene.height() * POINTS_PER_UNIT));
				PdfWriter writer = new PdfWriter(content, font, palette);
				writer.shape(new Shape.Box(new Extent(0, 0, scene.width(), scene.height()), 0, Optional.of(Ink.GROUND), Optional.empty()));
				writer.shapes(scene.shapes());
			}
			ByteArrayOutputStream bytes = new ByteArrayOutputStream();
			document.save(bytes);
			return bytes.toByteArray();
		} catch (IOException e) {
			throw new IllegalStateException("A document in memory could not be written.", e);
		}
	}

	private void shapes(List<Shape> shapes) throws IOException {
		for (Shape shape : shapes) {
			shape(shape);
		}
	}

	private void shape(Shape shape) throws IOException {
		if (shape instanceof Shape.Thing thing) {
			shapes(thing.shapes());
		} else if (shape instanceof Shape.Run run) {
			path(run.points());
			paint(Optional.empty(), Optional.of(run.stroke()));
		} else if (shape instanceof Shape.Area area) {
			path(area.points());
			page.closePath();
			paint(area.fill(), area.edge());
		} else if (shape instanceof Shape.Box box) {
			double radius = Math.min(box.radius(), Math.min(box.extent().width(), box.extent().height()) / 2);
			rounded(box.extent(), radius);
			paint(box.fill(), box.edge());
		} else if (shape instanceof Shape.Disc disc) {
			rounded(disc.extent(), disc.radius());
			paint(disc.fill(), disc.edge());
		} else if (shape instanceof Shape.Words words) {
			words(words);
		}
	}

	private void path(List<Point> points) throws IOException {
		page.moveTo((float) points.get(0).x(), (float) points.get(0).y());
		for (Point point : points.subList(1, points.size())) {
			page.lineTo((float) point.x(), (float) point.y());
		}
	}

	/** A rectangle with round corners; with corners as large as itself a circle. */
	private void rounded(Extent at, double radius) throws IOException {
		if (radius <= 0) {
			page.addRect((float) at.x(), (float) at.y(), (float) at.width(), (float) at.height());
			return;
		}
		double inner = radius * (1 - QUARTER);
		page.moveTo((float) (at.x() + radius), (float) at.y());
		page.lineTo((float) (at.right() - radius), (float) at.y());
		curve(at.right() - inner, at.y(), at.right(), at.y() + inner, at.right(), at.y() + radius);
		page.lineTo((float) at.right(), (float) (at.bottom() - radius));
		curve(at.right(), at.bottom() - inner, at.right() - inner, at.bottom(), at.right() - radius, at.bottom());
		page.lineTo((float) (at.x() + radius), (float) at.bottom());
		curve(at.x() + inner, at.bottom(), at.x(), at.bottom() - inner, at.x(), at.bottom() - radius);
		page.lineTo((float) at.x(), (float) (at.y() + radius));
		curve(at.x(), at.y() + inner, at.x() + inner, at.y(), at.x() + radius, at.y());
		page.closePath();
	}

	private void curve(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
		page.curveTo((float) x1, (float) y1, (float) x2, (float) y2, (float) x3, (float) y3);
	}

	private void paint(Optional<Ink> fill, Optional<Stroke> edge) throws IOException {
		if (fill.isPresent()) {
			fillWith(fill.get());
		}
		if (edge.isPresent()) {
			Stroke stroke = edge.get();
			drawWith(stroke.ink());
			page.setLineWidth((float) stroke.width());
			page.setLineJoinStyle(1);
			double[] pieces = stroke.dash().pieces();
			float[] dashes = new float[pieces.length];
			for (int i = 0; i < pieces.length; i++) {
				dashes[i] = (float) (pieces[i] * stroke.width());
			}
			page.setLineDashPattern(dashes, 0);
		}
		if (fill.isPresent() && edge.isPresent()) {
			page.fillAndStroke();
		} else if (fill.isPresent()) {
			page.fill();
		} else if (edge.isPresent()) {
			page.stroke();
		}
	}

	private void words(Shape.Words words) throws IOException {
		String text = drawable(words.text());
		float size = (float) words.size();
		double width = font.getStringWidth(text) / 1000 * size;
		double before = switch (words.align()) {
		case START -> 0;
		case MIDDLE -> width / 2;
		case END -> width;
		};
		page.beginText();
		page.setFont(font, size);
		fillWith(words.ink());
		page.setRenderingMode(words.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
		if (words.bold()) {
			drawWith(words.ink());
			page.setLineDashPattern(new float[0], 0);
			page.setLineWidth(BOLD * size);
		}
		// letters stand upright in a plane whose y grows downwards
		page.setTextMatrix(words.upwards()
				? new Matrix(0, -1, -1, 0, (float) words.at().x(), (float) (words.at().y() + before))
				: new Matrix(1, 0, 0, -1, (float) (words.at().x() - before), (float) words.at().y()));
		page.showText(text);
		page.endText();
	}

	/** A sign that the typeface has not becomes a question mark. */
	private String drawable(String text) {
		StringBuilder drawable = new StringBuilder();
		text.codePoints().forEach(point -> {
			String sign = Character.toString(point);
			try {
				font.encode(sign);
				drawable.append(sign);
			} catch (IOException | IllegalArgumentException e) {
				drawable.append('?');
			}
		});
		return drawable.toString();
	}

	private void fillWith(Ink ink) throws IOException {
		int colour = palette.of(ink);
		page.setNonStrokingColor(share(colour >> 16), share(colour >> 8), share(colour));
	}

	private void drawWith(Ink ink) throws IOException {
		int colour = palette.of(ink);
		page.setStrokingColor(share(colour >> 16), share(colour >> 8), share(colour));
	}

	private static float share(int part) {
		return (part & 0xff) / 255f;
	}
}
