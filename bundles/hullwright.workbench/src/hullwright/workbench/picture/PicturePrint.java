/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.picture;

import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Palette;
import hullwright.documents.scene.Scene;
import java.util.Set;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.graphics.GC;
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

	private static void print(Scene scene, PrinterData wish) {
		Printer printer = new Printer(wish);
		ScenePainter painter = new ScenePainter(printer, Palette.LIGHT, printer.getSystemFont().getFontData()[0].getName(), printer.getDPI().x);
		try {
			if (printer.startJob(scene.title()) && printer.startPage()) {
				Rectangle sheet = printer.getClientArea();
				double zoom = Math.min(sheet.width / scene.width(), sheet.height / scene.height());
				GC gc = new GC(printer);
				painter.paint(gc, scene, 0, 0, zoom, new Extent(0, 0, scene.width(), scene.height()), Set.of());
				gc.dispose();
				printer.endPage();
				printer.endJob();
			}
		} finally {
			painter.dispose();
			printer.dispose();
		}
	}
}
