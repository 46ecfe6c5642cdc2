/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.analysis.Figures;
import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Ink;
import hullwright.documents.scene.LetterWidths;
import hullwright.documents.scene.Point;
import hullwright.documents.scene.Scene;
import hullwright.documents.scene.Shape;
import hullwright.network.Boat;
import hullwright.network.Network;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Draws the networks of one boat, laid over the boat. The same boat with the same findings gives the same picture.
 */
public final class NetworkDrawing {

	/** The usual cautions, on every drawing that leaves the house. */
	private static final String CAUTION = "A design aid: local codes, the makers' instructions and a licensed electrician come first. "
			+ "Isolate batteries and chargers before work on wiring; measure after installation.";

	private static final double MARGIN = 24;
	private static final double BOW = 80;
	private static final double TITLE_SIZE = 18;
	private static final double LINE = 18;
	private static final double LEAST_WIDTH = 760;
	private static final double MARK = 20;

	private NetworkDrawing() {
	}

	/** The drawing with what is left of each limit; computes what it needs of the figures. */
	public static Scene of(Figures figures, List<Finding> findings) {
		return draw(figures.boat(), Margins.of(figures), findings);
	}

	/** The drawing without figures, for who does not want to wait for them. */
	public static Scene withoutFigures(Boat boat, List<Finding> findings) {
		return draw(boat, Margins.unknown(), findings);
	}

	private static Scene draw(Boat boat, Margins margins, List<Finding> findings) {
		Marks marks = new Marks(findings);
		Pencil page = new Pencil();
		double y = heading(boat, margins, marks, page);
		double right = LEAST_WIDTH;
		Sketch sketch = Sketch.of(boat);
		if (sketch.isEmpty()) {
			page.text(MARGIN, y + 24, "There is nothing to draw yet: this boat has no network and no device.", 13, Ink.SOFT_TEXT);
			y += 48;
		} else {
			Point end = new SketchLayout(sketch, MARGIN + BOW, y).arrange();
			right = Math.max(right, end.x());
			y = end.y() + 40;
			new BoatPainting(sketch, marks).draw(page);
			LinePainting lines = new LinePainting(margins, marks);
			sketch.connections.forEach(line -> lines.draw(line, page));
			TrunkPainting trunks = new TrunkPainting(sketch, margins, marks);
			sketch.trunks.forEach(trunk -> trunks.draw(trunk, page));
			CardFace face = new CardFace(margins, marks);
			sketch.cards.values().forEach(card -> page.add(face.draw(card)));
		}
		y = elsewhere(marks, page, y);
		y = new Legend().draw(page, MARGIN, y, right - MARGIN);
		page.text(MARGIN, y + 12, CAUTION, 10, Ink.SOFT_TEXT);
		right = Math.max(right, LetterWidths.of(CAUTION, 10, false) + 2 * MARGIN);
		return new Scene(title(boat), right, y + MARGIN, page.shapes());
	}

	private static String title(Boat boat) {
		return boat.series() + (boat.revision().isEmpty() ? "" : ", revision " + boat.revision()) + ", " + boat.selection();
	}

	/** The boat, and of each network what is left of what concerns it as a whole. */
	private static double heading(Boat boat, Margins margins, Marks marks, Pencil page) {
		page.bold(MARGIN, MARGIN + TITLE_SIZE, title(boat), TITLE_SIZE, Ink.TEXT);
		String options = boat.selection().hull().isPresent() && !boat.selection().options().isEmpty()
				? "options: " + String.join(", ", boat.selection().options()) : "";
		double y = MARGIN + TITLE_SIZE + LINE + 2;
		if (!options.isEmpty()) {
			page.text(MARGIN, y, options, 11, Ink.SOFT_TEXT);
			y += LINE;
		}
		for (int number = 0; number < boat.networks().size(); number++) {
			Network network = boat.networks().get(number);
			List<String> parts = new ArrayList<>(List.of(CardFace.simpleName(network.name())));
			parts.addAll(margins.ofNetwork(network.name()));
			String line = String.join(" · ", parts);
			Pencil pencil = new Pencil();
			pencil.box(MARGIN, y - 9, 26, 5, 0, Ink.ofNetwork(number), null);
			pencil.text(MARGIN + 34, y, line, 12, Ink.TEXT);
			double end = MARGIN + 34 + LetterWidths.of(line, 12, false);
			for (String element : elements(network)) {
				Optional<Severity> severity = marks.at(element);
				if (severity.isPresent()) {
					end += MARK;
					pencil.mark(end, y - 5, severity.get());
				}
			}
			String messages = elements(network).stream().map(marks::messages).collect(Collectors.joining());
			page.add(new Shape.Thing(network.name(), line + messages, new Extent(MARGIN, y - 14, end - MARGIN + 30, 19), pencil.shapes()));
			y += LINE + 2;
		}
		return y;
	}

	private static List<String> elements(Network network) {
		List<String> elements = new ArrayList<>(List.of(network.name()));
		network.backbones().forEach(backbone -> elements.add(backbone.name()));
		return elements;
	}

	/** Findings about what no symbol stands for, such as the series as a whole. */
	private static double elsewhere(Marks marks, Pencil page, double from) {
		double y = from;
		for (Finding finding : marks.elsewhere()) {
			Pencil pencil = new Pencil();
			pencil.mark(MARGIN + 10, y, finding.severity());
			String text = CardFace.simpleName(finding.element()) + ": " + finding.message();
			pencil.text(MARGIN + 28, y + 4, text, 11, Ink.TEXT);
			page.add(new Shape.Thing(finding.element(), text, new Extent(MARGIN, y - 10, 600, 20), pencil.shapes()));
			y += 24;
		}
		return y + 6;
	}
}
