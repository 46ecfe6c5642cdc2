/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.workbench.boat.BoatInView;
import hullwright.workbench.boat.DataView;
import hullwright.workbench.boat.FiguresView;
import hullwright.workbench.boat.NetworkView;
import hullwright.workbench.catalog.CatalogView;
import hullwright.workbench.live.FindingsView;
import hullwright.workbench.rulepage.RulePagesView;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * Takes a picture of each view on the example, in the light and in the dark theme, for a person to look at: they are in
 * {@code target/pictures}. That each shows something is all that a machine can tell.
 */
class PicturesOfTheWindowTest {

	private static final String LIGHT = "org.eclipse.e4.ui.css.theme.e4_default";
	private static final Path PICTURES = Path.of("target/pictures");
	private static final int FEWEST_COLOURS = 12;

	private static void theme(String id) {
		IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeEngine.class);
		ITheme theme = engine.getThemes().stream().filter(each -> each.getId().equals(id)).findFirst().orElseThrow();
		engine.setTheme(theme, false);
	}

	@AfterEach
	void backToLight() {
		Window.ui(() -> {
			theme(LIGHT);
			Window.page().resetPerspective();
			return null;
		});
	}

	@Test
	void everyViewShowsTheExampleOnLightGround() throws Exception {
		show(LIGHT, "light");
	}

	@Test
	void everyViewShowsTheExampleOnDarkGround() throws Exception {
		show("org.eclipse.e4.ui.css.theme.e4_dark", "dark");
	}

	private static void show(String theme, String suffix) throws Exception {
		Files.createDirectories(PICTURES);
		IFile file = ResourcesPlugin.getWorkspace().getRoot().getProject("harbour-pilot").getFile("fabelholm-38.hull");
		Window.ui(() -> {
			theme(theme);
			IWorkbenchPage page = Window.page();
			page.getWorkbenchWindow().getShell().setMaximized(true);
			return IDE.openEditor(page, file, true);
		});
		Window.until("the boat is in view", () -> BoatInView.get().current().filter(boat -> boat.boat().isPresent()), boat -> boat.isPresent());
		for (String view : new String[] { NetworkView.ID, FiguresView.ID, DataView.ID, CatalogView.ID, RulePagesView.ID, FindingsView.ID }) {
			Window.ui(() -> Window.page().showView(view));
			picture(view.substring(view.lastIndexOf('.') + 1) + "-" + suffix);
		}
	}

	/** Taken when two pictures in a row are the same: what is drawn in the background is there by then. */
	private static void picture(String name) {
		ImageData[] last = { null };
		ImageData data = Window.until("the window is at rest", () -> {
			ImageData now = shown();
			boolean same = last[0] != null && Arrays.equals(last[0].data, now.data);
			last[0] = now;
			return same ? now : null;
		}, picture -> picture != null);
		ImageLoader loader = new ImageLoader();
		loader.data = new ImageData[] { data };
		loader.save(PICTURES.resolve(name.toLowerCase(Locale.ROOT) + ".png").toString(), SWT.IMAGE_PNG);
		assertTrue(colours(data) >= FEWEST_COLOURS, name + " shows hardly anything");
	}

	private static ImageData shown() {
		Shell shell = Window.page().getWorkbenchWindow().getShell();
		Rectangle area = shell.getBounds();
		Image image = new Image(shell.getDisplay(), area.width, area.height);
		GC gc = new GC(shell.getDisplay());
		gc.copyArea(image, area.x, area.y);
		ImageData data = image.getImageData();
		gc.dispose();
		image.dispose();
		return data;
	}

	private static int colours(ImageData data) {
		Set<Integer> colours = new HashSet<>();
		for (int y = 0; y < data.height; y += 2) {
			for (int x = 0; x < data.width; x += 2) {
				colours.add(data.getPixel(x, y));
			}
		}
		return colours.size();
	}
}
