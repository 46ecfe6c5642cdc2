/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.boat;

import hullwright.lang.ide.AllBoats;
import hullwright.lang.ide.Tally;
import hullwright.report.CountsText;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ProgressBar;

/**
 * One line about all boats that can be ordered or are sold: how many are checked while a check is under way, and then what was found.
 */
final class FleetLine {

	private final Composite line;
	private final CLabel label;
	private final ProgressBar bar;

	FleetLine(Composite parent) {
		line = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(line);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
		label = new CLabel(line, SWT.NONE);
		label.setMargins(0, 0, 0, 0);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(label);
		bar = new ProgressBar(line, SWT.NONE);
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.FILL).hint(140, 6).exclude(true).applyTo(bar);
		bar.setVisible(false);
	}

	/** @return whether it needs another size now */
	boolean show(AllBoats all, String series) {
		Optional<Tally> tally = all.ofSeries(series);
		String text = all.underWay() ? String.format(Locale.ROOT, "%,d of %,d boats checked", all.checked(), all.boats())
				: tally.map(found -> of(all.boatsOf(series)) + (found.worst().isEmpty() ? "no findings" : CountsText.of(found::count))).orElse("");
		bar.setMaximum(all.boats());
		bar.setSelection(all.checked());
		boolean other = !text.equals(label.getText());
		if (other) {
			label.setText(text);
			label.setImage(all.underWay() ? null : tally.flatMap(Tally::worst).map(FoundOnButton::image).orElse(null));
		}
		if (bar.getVisible() != all.underWay()) {
			bar.setVisible(all.underWay());
			((GridData) bar.getLayoutData()).exclude = !all.underWay();
			return true;
		}
		return other;
	}

	private static String of(int boats) {
		return boats == 1 ? "One boat: " : String.format(Locale.ROOT, "All %,d boats: ", boats);
	}
}
