/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.documents;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.Figures;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.documents.chart.Chart;
import hullwright.documents.chart.DataMatrix;
import hullwright.documents.chart.FigureChart;
import hullwright.documents.chart.PowerCondition;
import hullwright.documents.drawing.NetworkDrawing;
import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Palette;
import hullwright.documents.scene.PdfWriter;
import hullwright.documents.scene.Scene;
import hullwright.documents.scene.Shape;
import hullwright.documents.scene.SvgWriter;
import hullwright.network.Boat;
import hullwright.network.Network;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * Every boat of the examples, drawn: nothing on board is missing, nothing lies on top of another, and the file is what the standard
 * for vector graphics (W3C SVG 1.1) and that for XML ask for.
 */
class DrawingsOfExamplesTest {

	private static final Path EXAMPLES = Path.of("../hullwright.examples/examples");

	@TestFactory
	Stream<DynamicTest> everyExample() throws Exception {
		List<DynamicTest> tests = new ArrayList<>();
		try (Stream<Path> folders = Files.list(EXAMPLES)) {
			for (Path folder : folders.filter(Files::isDirectory).sorted().toList()) {
				Snapshot snapshot = Snapshot.ofFolder(folder);
				for (Boat boat : Checker.create().boats(CheckRequest.ofAll(snapshot, LocalDate.EPOCH)).boats()) {
					tests.add(DynamicTest.dynamicTest(folder.getFileName() + ", " + boat.series() + ", " + boat.selection(),
							boat.networks().isEmpty() ? () -> drawNothing(boat) : () -> draw(boat)));
				}
			}
		}
		assertTrue(tests.size() > 30, "options and hulls of several examples");
		return tests.stream();
	}

	private static void drawNothing(Boat boat) {
		String svg = SvgWriter.write(NetworkDrawing.of(new Figures(boat), List.of()), Palette.DARK);
		assertTrue(svg.contains("There is nothing to draw yet"), svg);
	}

	private static void draw(Boat boat) throws Exception {
		Figures figures = new Figures(boat);
		Finding finding = Finding.ofText("yard/for-tests", Severity.WARNING, boat.networks().get(0).backbones().get(0).elements().get(0).origin(),
				"a finding for tests", List.of());
		Scene scene = NetworkDrawing.of(figures, List.of(finding));
		Set<String> drawn = scene.things().stream().map(Shape.Thing::element).collect(Collectors.toSet());
		onBoard(boat).forEach(element -> assertTrue(drawn.contains(element), () -> element + " is not drawn"));
		assertTrue(scene.things().stream().anyMatch(thing -> thing.element().equals(finding.element()) && thing.tip().contains("warning: a finding for tests")));
		cardsLieClear(boat, scene);
		everythingIsOnTheSheet(scene);

		String svg = SvgWriter.write(scene, Palette.LIGHT);
		assertEquals(svg, SvgWriter.write(NetworkDrawing.of(new Figures(boat), List.of(finding)), Palette.LIGHT), "the same boat gives the same bytes");
		Document document = parse(svg);
		assertEquals("http://www.w3.org/2000/svg", document.getDocumentElement().getNamespaceURI());
		Set<String> written = new HashSet<>();
		NodeList groups = document.getElementsByTagName("g");
		for (int i = 0; i < groups.getLength(); i++) {
			written.add(((Element) groups.item(i)).getAttribute("data-element"));
		}
		assertEquals(drawn, written);
		pdf(scene);
		charts(figures);
	}

	/** What another program reads out of the PDF: one page of the picture's size, 96 units to the inch, with all its words. */
	private static void pdf(Scene scene) throws Exception {
		byte[] bytes = PdfWriter.write(scene, Palette.LIGHT);
		assertArrayEquals(bytes, PdfWriter.write(scene, Palette.LIGHT), "the same picture gives the same bytes");
		try (PDDocument document = Loader.loadPDF(bytes)) {
			assertEquals(1, document.getNumberOfPages());
			assertEquals(scene.width() / 96, document.getPage(0).getMediaBox().getWidth() / 72, 0.01);
			assertEquals(scene.height() / 96, document.getPage(0).getMediaBox().getHeight() / 72, 0.01);
			PDFTextStripper stripper = new PDFTextStripper();
			stripper.setSortByPosition(false);
			String read = stripper.getText(document).replaceAll("\\s+", "");
			words(scene.shapes()).forEach(words -> assertTrue(read.contains(words.replaceAll("\\s+", "")), () -> "\"" + words + "\" is not in the PDF"));
		}
	}

	private static List<String> words(List<Shape> shapes) {
		List<String> words = new ArrayList<>();
		for (Shape shape : shapes) {
			if (shape instanceof Shape.Words line && !line.upwards()) {
				words.add(line.text());
			} else if (shape instanceof Shape.Thing thing) {
				words.addAll(words(thing.shapes()));
			}
		}
		return words;
	}

	private static List<String> onBoard(Boat boat) {
		List<String> elements = new ArrayList<>();
		boat.fittedDevices().forEach(device -> elements.add(device.name()));
		for (Network network : boat.networks()) {
			network.backbones().forEach(backbone -> backbone.elements().forEach(element -> elements.add(element.name())));
			network.drops().forEach(drop -> elements.add(drop.name()));
		}
		return elements;
	}

	/** The cards are those things that are named as a device is and have the size of a card. */
	private static void cardsLieClear(Boat boat, Scene scene) {
		Set<String> devices = boat.fittedDevices().stream().map(device -> device.name()).collect(Collectors.toSet());
		List<Shape.Thing> cards = scene.things().stream().filter(thing -> devices.contains(thing.element()) && thing.extent().height() > 50).toList();
		assertEquals(devices.size(), cards.size(), "a card for each device");
		for (int i = 0; i < cards.size(); i++) {
			for (int j = 0; j < i; j++) {
				Shape.Thing one = cards.get(i);
				Shape.Thing other = cards.get(j);
				assertTrue(!overlap(one.extent(), other.extent()), () -> one.element() + " lies on " + other.element());
			}
		}
	}

	private static boolean overlap(Extent one, Extent other) {
		return one.x() < other.right() && other.x() < one.right() && one.y() < other.bottom() && other.y() < one.bottom();
	}

	private static void everythingIsOnTheSheet(Scene scene) {
		for (Shape.Thing thing : scene.things()) {
			Extent at = thing.extent();
			assertTrue(at.x() >= 0 && at.y() >= 0 && at.right() <= scene.width() && at.bottom() <= scene.height(), () -> thing.element() + " lies off the sheet: " + at);
		}
	}

	private static void charts(Figures figures) {
		for (FigureChart each : FigureChart.values()) {
			Chart chart = each.of(figures, "", PowerCondition.LOWEST);
			assertTrue(chart.table().stream().allMatch(row -> row.size() == chart.table().get(0).size()), () -> each + " has ragged rows");
			assertTrue(!chart.tabbed().contains("NaN") && !chart.tabbed().contains("Infinity"), chart::tabbed);
		}
		assertTrue(FigureChart.VOLTAGE.of(figures, "", PowerCondition.USUAL).table().size() > 1, "some device is fed");
		Chart data = DataMatrix.of(figures);
		assertTrue(data.table().size() > 1);
	}

	private static Document parse(String svg) throws Exception {
		DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
		factory.setNamespaceAware(true);
		factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
		return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
	}
}
