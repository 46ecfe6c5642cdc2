/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.lang.ide.starter.Names;
import hullwright.lang.ide.starter.StarterSeries;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/**
 * The fields that make a series to begin with. The name follows the title until somebody writes another.
 */
final class SeriesFields {

	private final Text title;
	private final Text name;
	private final Text revision;
	private final Combo voltage;
	private final List<Button> devices = new ArrayList<>();
	private boolean ownName;
	private boolean following;

	SeriesFields(DraftPage page, Composite parent) {
		title = page.text("Title", "New boat", "What people call the series");
		name = page.text("Name", Names.from("New boat"), "How texts, findings and documents refer to it");
		revision = page.text("Revision", "A", "Of its text; may be empty");
		voltage = page.combo("Voltage on board", Arrays.stream(StarterSeries.Voltage.values()).map(StarterSeries.Voltage::label).toList());
		DraftPage.labelOfHigh(parent, "To begin with");
		Composite choices = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(choices);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(choices);
		for (StarterSeries.Device device : StarterSeries.Device.values()) {
			Button choice = new Button(choices, SWT.CHECK);
			choice.setText(device.label());
			choice.setSelection(device == StarterSeries.Device.DISPLAY || device == StarterSeries.Device.DEPTH);
			choice.addListener(SWT.Selection, event -> page.changed());
			devices.add(choice);
		}
		title.addModifyListener(event -> follow());
		name.addModifyListener(event -> ownName |= !following);
	}

	private void follow() {
		if (!ownName) {
			following = true;
			name.setText(Names.from(title.getText()));
			following = false;
		}
	}

	/** Why the values do not do, in a sentence. */
	Optional<String> problem() {
		if (title.getText().isBlank() && !ownName) {
			return Optional.of("Write what people call the series, such as: Day boat 23");
		}
		return Names.problem("The series", name.getText()).or(() -> chosen().isEmpty()
				? Optional.of("A network without a device is no network. Tick at least one.")
				: Optional.empty());
	}

	/** The series of the values. */
	StarterSeries series() {
		return new StarterSeries(name.getText(), title.getText(), revision.getText(), StarterSeries.Voltage.values()[voltage.getSelectionIndex()], chosen());
	}

	private List<StarterSeries.Device> chosen() {
		return Arrays.stream(StarterSeries.Device.values()).filter(device -> devices.get(device.ordinal()).getSelection()).toList();
	}

	/** The text field to begin at. */
	Text first() {
		return title;
	}
}
