/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.lang.ide.starter.Names;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;

/**
 * Asks for the first series of a new project.
 */
final class FirstSeriesPage extends DraftPage {

	private final ProjectPage project;
	private SeriesFields series;

	FirstSeriesPage(ProjectPage project) {
		super("series", "First series", "One network that works. Everything in it can be changed in the text.");
		this.project = project;
	}

	@Override
	void createFields(Composite parent) {
		series = new SeriesFields(this, parent);
	}

	@Override
	Optional<String> problem() {
		return series.problem();
	}

	@Override
	Map<String, String> texts() {
		Map<String, String> texts = new LinkedHashMap<>();
		texts.put(file(), series.series().text());
		texts.put("yard.hull", project.profile());
		return texts;
	}

	/** The file of the series. */
	String file() {
		String file = Names.file(series.series().title());
		return file.startsWith(".") || file.equals("yard.hull") ? "series.hull" : file;
	}

	@Override
	public void setVisible(boolean visible) {
		super.setVisible(visible);
		if (visible) {
			changed();
			series.first().setFocus();
			series.first().selectAll();
		}
	}
}
