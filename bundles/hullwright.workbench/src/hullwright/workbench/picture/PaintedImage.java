/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.picture;

import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Ink;
import hullwright.documents.scene.Palette;
import hullwright.documents.scene.Scene;
import java.util.Set;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;

/**
 * A picture as an image, on a light ground.
 */
final class PaintedImage {

	/** An image with more dots than this is no help to anybody, and may not fit into memory. */
	private static final double MOST_DOTS = 60_000_000;

	private PaintedImage() {
	}

	/**
	 * Paints a picture. To be called by the UI thread.
	 *
	 * @param wantedScale dots for each unit of the picture; fewer if the image would be too large
	 */
	static ImageData of(Scene scene, double wantedScale) {
		double scale = Math.min(wantedScale, Math.sqrt(MOST_DOTS / (scene.width() * scene.height())));
		Display display = Display.getCurrent();
		Image image = new Image(display, Math.max(1, (int) (scene.width() * scale)), Math.max(1, (int) (scene.height() * scale)));
		GC gc = new GC(image);
		ScenePainter painter = new ScenePainter(display, Palette.LIGHT, display.getSystemFont().getFontData()[0].getName(), display.getDPI().x);
		try {
			int ground = Palette.LIGHT.of(Ink.GROUND);
			gc.setBackground(new Color(ground >> 16 & 0xff, ground >> 8 & 0xff, ground & 0xff));
			gc.fillRectangle(image.getBounds());
			painter.paint(gc, scene, 0, 0, scale, new Extent(0, 0, scene.width(), scene.height()), Set.of());
			return image.getImageData(100);
		} finally {
			painter.dispose();
			gc.dispose();
			image.dispose();
		}
	}
}
