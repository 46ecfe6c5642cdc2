/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.rules.report.CheckReport;
import hullwright.rules.report.Occurrence;
import hullwright.rules.report.ReportedFinding;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * How far the check of all boats of a project is, and what the last one that was completed has found.
 *
 * @param folder the folder of the project
 * @param checked how many boats of all its series the check has done
 * @param boats how many there are
 * @param report what the last complete check found; it may be about an earlier text while the check is under way
 */
public record AllBoats(Path folder, int checked, int boats, Optional<CheckReport> report) {

	/** Whether the check is under way. */
	public boolean underWay() {
		return checked < boats;
	}

	/** What the last complete check found on a series, on whichever of its boats; nothing as long as there was none. */
	public Optional<Tally> ofSeries(String series) {
		return tally(series, where -> true);
	}

	/** What it found on a sold hull. */
	public Optional<Tally> ofHull(String series, String hull) {
		return tally(series, where -> where.onAll() || where.hulls().contains(hull));
	}

	/** What it found on boats with an option and not on those without. */
	public Optional<Tally> ofOption(String series, String option) {
		return tally(series, where -> where.neededOptions().contains(option));
	}

	/** How many boats of a series were checked; 0 if it was not. */
	public int boatsOf(String series) {
		return report.stream().flatMap(each -> each.series().stream()).filter(each -> each.series().equals(series))
				.mapToInt(each -> each.combinations() + each.hulls()).sum();
	}

	private Optional<Tally> tally(String series, Predicate<Occurrence> wanted) {
		return report.filter(each -> each.series().stream().anyMatch(coverage -> coverage.series().equals(series))).map(each -> {
			List<ReportedFinding> found = each.findings().stream()
					.filter(reported -> reported.occurrence().series().equals(series) && wanted.test(reported.occurrence())).toList();
			return Tally.of(found);
		});
	}
}
