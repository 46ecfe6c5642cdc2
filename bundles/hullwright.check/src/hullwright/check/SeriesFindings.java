/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Selection;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.Occurrence;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.SetAside;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What was found on a series and on its boats, each finding once with the boats on which it occurs. It knows no text, so that it can
 * be kept for as long as the series stays the same.
 */
final class SeriesFindings {

	private final String series;
	private final List<String> options;
	private final List<Selection> boats;
	private final int combinations;
	private final boolean allOrderable;
	private final List<ReportedFinding> wholeSeries = new ArrayList<>();
	private final Map<Matter, Sightings> sightings = new LinkedHashMap<>();

	/**
	 * Nothing yet.
	 *
	 * @param series the name of the series
	 * @param options the names of all its options
	 * @param boats the boats that are looked at
	 */
	SeriesFindings(String series, List<String> options, BoatsOfSeries boats) {
		this.series = series;
		this.options = options;
		this.boats = boats.boats();
		combinations = boats.combinations();
		allOrderable = boats.allOrderable();
	}

	/** What one finding is about, and what silences it; the measured values may differ from boat to boat. */
	private record Matter(String rule, String element, String key, Severity severity, Optional<SetAside.Silenced> silenced) {
	}

	private static final class Sightings {
		private Finding worst;
		private final BitSet boats = new BitSet();

		void add(int boat, Finding finding) {
			if (worst == null || finding.distanceFromLimit() > worst.distanceFromLimit()) {
				worst = finding;
			}
			boats.set(boat);
		}
	}

	/** Adds what was found on the series as a whole. */
	void ofSeries(List<Finding> findings) {
		findings.forEach(each -> wholeSeries.add(new ReportedFinding(each, new Occurrence(series, true, "", List.of(), 0))));
	}

	/** Adds a finding on one of the boats. */
	void onBoat(int boat, Finding finding, Optional<SetAside.Silenced> silenced) {
		Matter matter = new Matter(finding.rule(), finding.element(), finding.key(), finding.severity(), silenced);
		sightings.computeIfAbsent(matter, each -> new Sightings()).add(boat, finding);
	}

	/**
	 * The findings of the rules that did not fail, each with where it occurs.
	 *
	 * @param guard knows which rules failed, then or since
	 * @param silenced collects those that others make meaningless
	 */
	List<ReportedFinding> reported(RuleGuard guard, List<SetAside> silenced) {
		List<SortedSet<String>> ordered = new ArrayList<>();
		boats.subList(0, combinations).forEach(boat -> ordered.add(new TreeSet<>(boat.options())));
		SmallestCondition conditions = new SmallestCondition(options, ordered);
		List<ReportedFinding> findings = new ArrayList<>();
		wholeSeries.stream().filter(each -> guard.failure(each.finding().rule()).isEmpty()).forEach(findings::add);
		sightings.forEach((matter, seen) -> {
			if (guard.failure(matter.rule).isEmpty()) {
				ReportedFinding reported = new ReportedFinding(seen.worst, occurrence(seen.boats, conditions));
				matter.silenced.ifPresentOrElse(why -> silenced.add(new SetAside(reported, why)), () -> findings.add(reported));
			}
		});
		return findings;
	}

	private Occurrence occurrence(BitSet seen, SmallestCondition conditions) {
		boolean onAll = seen.cardinality() == boats.size();
		BitSet ordered = seen.get(0, combinations);
		List<String> hulls = seen.stream().filter(number -> number >= combinations).mapToObj(number -> boats.get(number).hull().orElseThrow()).toList();
		String condition = allOrderable ? conditions.of(ordered) : onAll ? "" : boatsInWords(ordered);
		return new Occurrence(series, onAll, condition, hulls, seen.cardinality());
	}

	/** Where not all combinations were checked no condition is known to be exact, so the plainest boat stands for the others. */
	private String boatsInWords(BitSet ordered) {
		return ordered.stream().mapToObj(number -> boats.get(number).options()).min(Comparator.comparingInt(SortedSet::size))
				.map(chosen -> "for example " + (chosen.isEmpty() ? "no option" : String.join(" and ", chosen)))
				.orElse("");
	}
}
