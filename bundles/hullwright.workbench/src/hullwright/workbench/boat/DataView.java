/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.boat;

import hullwright.documents.chart.Chart;
import hullwright.documents.chart.DataMatrix;
import hullwright.lang.ide.LiveBoat;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.swt.widgets.Composite;

/**
 * Who tells and who needs which data on the boat in view.
 */
public final class DataView extends BoatPictureView {

	/** The id under which plugin.xml declares this view. */
	public static final String ID = "hullwright.workbench.data";

	@Override
	public void createPartControl(Composite parent) {
		super.createPartControl(parent);
		offerTable();
		canvas().startInNaturalSize();
	}

	@Override
	protected void show(LiveBoat boat) {
		AtomicReference<Chart> drawn = new AtomicReference<>();
		draw("Following the data", monitor -> {
			drawn.set(boat.figures(DataMatrix::of).orElseThrow());
			return drawn.get().scene();
		}, scene -> chart(boat, drawn.get(), "No device of this boat tells or needs any data that a catalog states."));
	}
}
