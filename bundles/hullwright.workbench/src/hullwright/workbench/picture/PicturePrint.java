/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.picture;

import hullwright.documents.scene.Scene;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Prints a picture on one sheet, as large as fits.
 */
final class PicturePrint {

	private PicturePrint() {
	}

	static void ask(Shell shell, PictureCanvas canvas) {
		if (canvas.scene().isEmpty()) {
			return;
		}
		try {
			PrintDialog dialog = new PrintDialog(shell);
			PrinterData wish = new PrinterData();
			wish.orientation = PrinterData.LANDSCAPE;
			dialog.setPrinterData(wish);
			PrinterData chosen = dialog.open();
			if (chosen != null) {
				print(canvas.scene().get(), chosen);
			}
		} catch (SWTError e) {
			StatusManager.getManager().handle(new Status(IStatus.ERROR, "hullwright.workbench", "There is no printer that could be used.", e),
					StatusManager.SHOW | StatusManager.LOG);
		}
	}

	/**
	 * Prints by way of an image: what is scaled on a printer itself comes out at a quarter of its size on GTK, which scales once more.
	 */
	private static void print(Scene scene, PrinterData wish) {
		Printer printer = new Printer(wish);
		try {
			if (printer.startJob(scene.title()) && printer.startPage()) {
				Rectangle sheet = printer.getClientArea();
				double zoom = Math.min(sheet.width / scene.width(), sheet.height / scene.height());
				ImageData dots = PaintedImage.of(scene, zoom);
				Image image = new Image(printer, dots);
				GC gc = new GC(printer);
				gc.drawImage(image, 0, 0, dots.width, dots.height, 0, 0, (int) (scene.width() * zoom), (int) (scene.height() * zoom));
				gc.dispose();
				image.dispose();
				printer.endPage();
				printer.endJob();
			}
		} finally {
			printer.dispose();
		}
	}
}
