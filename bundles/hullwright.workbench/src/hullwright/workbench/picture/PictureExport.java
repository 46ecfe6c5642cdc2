/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.picture;

import hullwright.documents.scene.Palette;
import hullwright.documents.scene.PdfWriter;
import hullwright.documents.scene.Scene;
import hullwright.documents.scene.SvgWriter;
import hullwright.workbench.export.WholeFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Saves a picture as a file, whole or not at all: SVG to be used elsewhere, PDF to be passed on, PNG to be looked at.
 */
public final class PictureExport {

	/** Dots for each unit of the picture, so that an image is crisp on paper and on fine screens. */
	private static final double IMAGE_SCALE = 2;

	/** In the order in which they are offered. */
	private static final List<String> ENDINGS = List.of(".svg", ".pdf", ".png");

	private PictureExport() {
	}

	static void ask(Shell shell, PictureCanvas canvas) {
		if (canvas.scene().isEmpty()) {
			return;
		}
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setText("Save picture as");
		dialog.setFilterNames(new String[] { "SVG, for documents and other programs", "PDF, to be passed on and printed", "PNG, an image" });
		dialog.setFilterExtensions(ENDINGS.stream().map(ending -> "*" + ending).toArray(String[]::new));
		dialog.setFileName(canvas.scene().get().title().replaceAll("[^A-Za-z0-9]+", "-").toLowerCase(Locale.ROOT) + ".svg");
		dialog.setOverwrite(true);
		String chosen = dialog.open();
		if (chosen != null) {
			String name = chosen.matches(".*\\.[A-Za-z]+") ? chosen : chosen + ENDINGS.get(Math.max(0, dialog.getFilterIndex()));
			try {
				save(canvas.scene().get(), Path.of(name));
			} catch (IOException e) {
				StatusManager.getManager().handle(new Status(IStatus.ERROR, "hullwright.workbench", "The picture could not be saved as " + name + ".", e),
						StatusManager.SHOW | StatusManager.LOG);
			}
		}
	}

	/**
	 * Saves a picture; what the file holds follows from its ending. To be called by the UI thread.
	 *
	 * @throws IOException if the ending is none of .svg, .pdf and .png, or the file cannot be written; what was there is as it was
	 */
	public static void save(Scene scene, Path file) throws IOException {
		String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
		if (name.endsWith(".svg")) {
			write(file, SvgWriter.write(scene, Palette.LIGHT).getBytes(StandardCharsets.UTF_8));
		} else if (name.endsWith(".pdf")) {
			write(file, PdfWriter.write(scene, Palette.LIGHT));
		} else if (name.endsWith(".png")) {
			write(file, png(scene));
		} else {
			throw new IOException("a picture is saved as .svg, .pdf or .png, not as " + file.getFileName());
		}
	}

	private static byte[] png(Scene scene) {
		ImageLoader loader = new ImageLoader();
		loader.data = new ImageData[] { PaintedImage.of(scene, IMAGE_SCALE) };
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		loader.save(bytes, SWT.IMAGE_PNG);
		return bytes.toByteArray();
	}

	private static void write(Path file, byte[] content) throws IOException {
		WholeFile.write(file, content);
		for (IContainer folder : ResourcesPlugin.getWorkspace().getRoot().findContainersForLocationURI(file.toAbsolutePath().getParent().toUri())) {
			try {
				folder.refreshLocal(IResource.DEPTH_ONE, null);
			} catch (CoreException e) {
				StatusManager.getManager().handle(e, "hullwright.workbench");
			}
		}
	}
}
