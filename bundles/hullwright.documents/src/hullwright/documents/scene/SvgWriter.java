/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.scene;

import java.io.StringWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes a picture as Scalable Vector Graphics (W3C SVG 1.1). The same picture gives the same bytes.
 */
public final class SvgWriter {

	private static final String FONTS = "'DejaVu Sans', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif";

	private final XMLStreamWriter xml;
	private final Palette palette;

	private SvgWriter(XMLStreamWriter xml, Palette palette) {
		this.xml = xml;
		this.palette = palette;
	}

	/** The picture as the text of an SVG file. */
	public static String write(Scene scene, Palette palette) {
		StringWriter text = new StringWriter();
		try {
			XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
			new SvgWriter(xml, palette).scene(scene);
			xml.flush();
		} catch (XMLStreamException e) {
			throw new IllegalStateException("A text in memory could not be written.", e);
		}
		return text.append('\n').toString();
	}

	private void scene(Scene scene) throws XMLStreamException {
		xml.writeStartDocument("UTF-8", "1.0");
		xml.writeCharacters("\n");
		xml.writeStartElement("svg");
		xml.writeDefaultNamespace("http://www.w3.org/2000/svg");
		xml.writeAttribute("width", number(scene.width()));
		xml.writeAttribute("height", number(scene.height()));
		xml.writeAttribute("viewBox", "0 0 " + number(scene.width()) + " " + number(scene.height()));
		xml.writeAttribute("font-family", FONTS);
		textElement("title", scene.title());
		shape(new Shape.Box(new Extent(0, 0, scene.width(), scene.height()), 0, Optional.of(Ink.GROUND), Optional.empty()));
		for (Shape shape : scene.shapes()) {
			shape(shape);
		}
		xml.writeCharacters("\n");
		xml.writeEndElement();
		xml.writeEndDocument();
	}

	private void shape(Shape shape) throws XMLStreamException {
		if (shape instanceof Shape.Thing thing) {
			xml.writeCharacters("\n");
			xml.writeStartElement("g");
			xml.writeAttribute("data-element", thing.element());
			if (!thing.tip().isEmpty()) {
				textElement("title", thing.tip());
			}
			for (Shape part : thing.shapes()) {
				shape(part);
			}
			xml.writeCharacters("\n");
			xml.writeEndElement();
		} else if (shape instanceof Shape.Run run) {
			start("polyline");
			xml.writeAttribute("points", points(run.points()));
			xml.writeAttribute("fill", "none");
			edge(Optional.of(run.stroke()));
			xml.writeEndElement();
		} else if (shape instanceof Shape.Area area) {
			start("polygon");
			xml.writeAttribute("points", points(area.points()));
			fill(area.fill());
			edge(area.edge());
			xml.writeEndElement();
		} else if (shape instanceof Shape.Box box) {
			box(box);
		} else if (shape instanceof Shape.Disc disc) {
			start("circle");
			xml.writeAttribute("cx", number(disc.centre().x()));
			xml.writeAttribute("cy", number(disc.centre().y()));
			xml.writeAttribute("r", number(disc.radius()));
			fill(disc.fill());
			edge(disc.edge());
			xml.writeEndElement();
		} else if (shape instanceof Shape.Words words) {
			words(words);
		}
	}

	private void box(Shape.Box box) throws XMLStreamException {
		start("rect");
		xml.writeAttribute("x", number(box.extent().x()));
		xml.writeAttribute("y", number(box.extent().y()));
		xml.writeAttribute("width", number(box.extent().width()));
		xml.writeAttribute("height", number(box.extent().height()));
		if (box.radius() > 0) {
			xml.writeAttribute("rx", number(box.radius()));
		}
		fill(box.fill());
		edge(box.edge());
		xml.writeEndElement();
	}

	private void words(Shape.Words words) throws XMLStreamException {
		start("text");
		xml.writeAttribute("x", number(words.at().x()));
		xml.writeAttribute("y", number(words.at().y()));
		xml.writeAttribute("font-size", number(words.size()));
		if (words.upwards()) {
			xml.writeAttribute("transform", "rotate(-90 " + number(words.at().x()) + " " + number(words.at().y()) + ")");
		}
		if (words.bold()) {
			xml.writeAttribute("font-weight", "bold");
		}
		if (words.align() != Shape.Words.Align.START) {
			xml.writeAttribute("text-anchor", words.align().name().toLowerCase(Locale.ROOT));
		}
		fill(Optional.of(words.ink()));
		xml.writeCharacters(permitted(words.text()));
		xml.writeEndElement();
	}

	private void start(String element) throws XMLStreamException {
		xml.writeCharacters("\n");
		xml.writeStartElement(element);
	}

	private void textElement(String element, String text) throws XMLStreamException {
		start(element);
		xml.writeCharacters(permitted(text));
		xml.writeEndElement();
	}

	private void fill(Optional<Ink> ink) throws XMLStreamException {
		xml.writeAttribute("fill", ink.isPresent() ? colour(ink.get()) : "none");
	}

	private void edge(Optional<Stroke> edge) throws XMLStreamException {
		if (edge.isPresent()) {
			Stroke stroke = edge.get();
			xml.writeAttribute("stroke", colour(stroke.ink()));
			xml.writeAttribute("stroke-width", number(stroke.width()));
			xml.writeAttribute("stroke-linejoin", "round");
			if (stroke.dash() != Stroke.Dash.NONE) {
				xml.writeAttribute("stroke-dasharray", Arrays.stream(stroke.dash().pieces()).mapToObj(piece -> number(piece * stroke.width()))
						.collect(Collectors.joining(" ")));
			}
		}
	}

	private String colour(Ink ink) {
		return String.format(Locale.ROOT, "#%06x", palette.of(ink));
	}

	private static String points(List<Point> points) {
		return points.stream().map(point -> number(point.x()) + "," + number(point.y())).collect(Collectors.joining(" "));
	}

	/** One decimal, and none where it would be a nought. */
	private static String number(double value) {
		String text = String.format(Locale.ROOT, "%.1f", value);
		return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
	}

	/** XML 1.0 knows no control characters, whatever a text says. */
	private static String permitted(String text) {
		return text.codePoints().filter(point -> point >= 0x20 && (point < 0xD800 || point > 0xDFFF) && point != 0xFFFE && point != 0xFFFF
				|| point == '\n' || point == '\t').collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
	}
}
