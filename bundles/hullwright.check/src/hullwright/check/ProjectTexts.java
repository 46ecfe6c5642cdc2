/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.resolve.SeriesPlan;
import hullwright.rules.edit.TextChange;
import hullwright.spec.Series;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What stands in the texts of projects, and how a person's additions are written into them. Safe for use by several threads.
 */
public final class ProjectTexts {

	private final Object reading;
	private final SpecReader reader;
	private final Map<Series, SeriesPlan> plans;

	/**
	 * Reads as an engine does.
	 *
	 * @param reading the lock that guards reading
	 */
	ProjectTexts(Object reading, SpecReader reader, Map<Series, SeriesPlan> plans) {
		this.reading = reading;
		this.reader = reader;
		this.plans = plans;
	}

	/** The series of a project that can be read, in the order of their files. */
	public List<SeriesInText> series(Snapshot snapshot) {
		synchronized (reading) {
			PlannedSeries planned = PlannedSeries.of(reader.read(snapshot), CheckRequest.ofAll(snapshot, LocalDate.EPOCH), plans);
			return planned.plans().stream().map(plan -> new SeriesInText(plan.origin().file(), plan.outline(), plan.options())).toList();
		}
	}

	/** The catalogs of a project, in the order of their files; one that has errors is there with what could be read. */
	public List<CatalogInText> catalogs(Snapshot snapshot) {
		synchronized (reading) {
			return CatalogInText.of(reader.read(snapshot));
		}
	}

	/** An addition as a change of text; empty if the text no longer has the series or catalog at that place. */
	public Optional<TextChange> rendered(Snapshot snapshot, Addition addition) {
		synchronized (reading) {
			return new IntentRendering(reader.read(snapshot)).render(addition);
		}
	}
}
