/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.documents.scene.Scene;
import hullwright.documents.scene.Shape;
import hullwright.workbench.boat.BoatInView;
import hullwright.workbench.boat.BoatsView;
import hullwright.workbench.boat.NetworkView;
import hullwright.workbench.picture.PictureCanvas;
import hullwright.workbench.picture.PictureExport;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The drawing follows text, choice and caret, and leads back to the text.
 */
class NetworkViewTest {

	private static final String TEXT = SmallBoat.TEXT
			.replace("\tplaces {", "\toptions { sounder \"Depth sounder\" }\n\n\tplaces {")
			.replace("\t\t// one device", "\t\tdrop block.2 to depth : depthTransducer at helm when sounder\n\t\t// one device")
			.replace("hull 1", "hull 1\n\thull 2 with sounder");

	@TempDir
	private Path folder;

	private static Bench open(String name) throws Exception {
		Bench bench = Bench.open(name, Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", TEXT), "dinghy.hull");
		Window.ui(() -> Window.page().showView(NetworkView.ID));
		Window.ui(() -> {
			Window.page().activate(bench.editor());
			return null;
		});
		Window.until("the boat of this project is in view", () -> BoatInView.get().current().map(boat -> boat.folder().getFileName().toString()),
				folder -> folder.filter(name::equals).isPresent());
		return bench;
	}

	private static PictureCanvas canvas() {
		return ((NetworkView) Window.page().findView(NetworkView.ID)).canvas();
	}

	/** What stands for an element; for a device its card and not its drop, which has the same name. */
	private static Optional<Shape.Thing> thing(String element) {
		return canvas().scene().stream().flatMap(scene -> scene.things().stream()).filter(thing -> thing.element().equals(element))
				.reduce((earlier, later) -> later);
	}

	private static Shape.Thing drawn(String element) {
		return Window.until(element + " is drawn", () -> thing(element), Optional::isPresent).orElseThrow();
	}

	@Test
	void theDrawingShowsTheBoatWithWhatIsLeftAndFollowsTheText() throws Exception {
		try (Bench bench = open("drawing")) {
			assertTrue(drawn("Dinghy.instruments.display").tip().contains(" left"), "volts that are left");

			bench.type("terminator right : endMale at helm", "");
			Window.until("the terminator is gone from the drawing", () -> thing("Dinghy.instruments.right"), Optional::isEmpty);

			bench.type("tee block : block4", "tee block : ");
			Window.until("a note says that this is the last boat that could be read", NetworkViewTest::texts,
					texts -> texts.stream().anyMatch(text -> text.startsWith("The last boat that could be read; line ")));
			drawn("Dinghy.instruments.display");
		}
	}

	private static List<String> texts() {
		return Window.below((Composite) Window.page().getWorkbenchWindow().getShell(), Label.class).stream()
				.filter(Label::isVisible).map(Label::getText).toList();
	}

	@Test
	void anotherHullComesIntoViewByAButton() throws Exception {
		try (Bench bench = open("hulls")) {
			drawn("Dinghy.instruments.display");
			Window.ui(() -> Window.page().showView(BoatsView.ID));
			Button hull = Window.until("the hull is offered", () -> Window.below(Window.page().getWorkbenchWindow().getShell(), Button.class).stream()
					.filter(button -> button.getText().equals("Hull 2")).findFirst(), Optional::isPresent).orElseThrow();
			Window.ui(() -> {
				hull.setSelection(true);
				hull.notifyListeners(SWT.Selection, new Event());
				return null;
			});
			drawn("Dinghy.instruments.depth");
			assertEquals("2", Window.ui(() -> BoatInView.get().current().orElseThrow().boat().orElseThrow().selection().hull().orElseThrow()));
		}
	}

	@Test
	void whatIsWrongOnAnotherHullIsToldOnItsButton() throws Exception {
		try (Bench bench = open("verdicts")) {
			Window.ui(() -> Window.page().showView(BoatsView.ID));
			bench.type("drop block.2 to depth", "drop block.2 via 7 m of light to depth");
			List<String> told = Window.until("the hull and the option say so", () -> Window.below(Window.page().getWorkbenchWindow().getShell(), Button.class)
					.stream().map(Button::getText).toList(), buttons -> buttons.stream().anyMatch(text -> text.startsWith("Hull 2 – 1 error")));
			assertTrue(told.contains("Hull 1") && told.stream().anyMatch(text -> text.startsWith("Depth sounder – 1 error")), told.toString());
			Window.until("and so does the line about all boats", () -> Window.below(Window.page().getWorkbenchWindow().getShell(), CLabel.class).stream()
					.map(CLabel::getText).toList(), lines -> lines.stream().anyMatch(line -> line.startsWith("All 4 boats: 1 error")));
		}
	}

	@Test
	void textAndDrawingLeadToEachOther() throws Exception {
		try (Bench bench = open("linked")) {
			Shape.Thing device = drawn("Dinghy.instruments.display");
			bench.caretAt("tee block");
			Window.until("the tee is marked", () -> canvas().chosen(), chosen -> chosen.stream().anyMatch(element -> element.endsWith(".block")));

			Window.ui(() -> {
				PictureCanvas canvas = canvas();
				canvas.fit();
				Event click = new Event();
				click.button = 1;
				click.x = (int) ((device.extent().x() + 20) * canvas.zoom());
				click.y = (int) ((device.extent().y() + 20) * canvas.zoom());
				canvas.notifyListeners(SWT.MouseDown, click);
				canvas.notifyListeners(SWT.MouseUp, click);
				return null;
			});
			assertEquals(Set.of("Dinghy.instruments.display"), Window.ui(() -> canvas().chosen()));
			Window.until("its name is selected in the text", () -> bench.text().getSelectionText(), "display"::equals);
		}
	}

	@Test
	void thePictureIsSavedWholeAsVectorsAsASheetAndAsAnImage() throws Exception {
		try (Bench bench = open("saved")) {
			drawn("Dinghy.instruments.display");
			Scene scene = Window.ui(() -> canvas().scene().orElseThrow());
			Path vectors = folder.resolve("boat.svg");
			Path image = folder.resolve("boat.png");
			Path sheet = folder.resolve("boat.pdf");
			Window.ui(() -> {
				PictureExport.save(scene, vectors);
				PictureExport.save(scene, image);
				PictureExport.save(scene, sheet);
				return null;
			});
			assertTrue(Files.readString(vectors).contains("data-element=\"Dinghy.instruments.display\""));
			assertEquals("%PDF-1.", new String(Files.readAllBytes(sheet), 0, 7, StandardCharsets.US_ASCII));
			ImageData data = new ImageData(image.toString());
			assertEquals((int) (scene.width() * 2), data.width);
			Path plain = Files.writeString(folder.resolve("plain.txt"), "");
			assertEquals(Files.getPosixFilePermissions(plain), Files.getPosixFilePermissions(image), "whoever may read other files may read it");
			try (var files = Files.list(folder)) {
				assertEquals(4, files.count(), "nothing half-written is left");
			}
		}
	}
}
