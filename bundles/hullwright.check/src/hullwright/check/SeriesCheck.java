/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.analysis.Figures;
import hullwright.network.Boat;
import hullwright.network.Origin;
import hullwright.network.Selection;
import hullwright.resolve.SeriesPlan;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.SeriesRule;
import hullwright.rules.SeriesUnderCheck;
import hullwright.rules.Severity;
import hullwright.rules.report.Occurrence;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.SetAside;
import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Checks the boats of one series and says of each finding once on which of them it occurs.
 */
final class SeriesCheck {

	private final SeriesPlan plan;
	private final List<Selection> boats;
	private final int combinations;
	private final boolean allOrderable;
	private final boolean allSold;
	private final List<LoadedRule> rules;
	private final ProfileInForce profile;
	private final RuleGuard guard;
	private final Predicate<Origin> known;
	private final BooleanSupplier cancelled;
	private final CheckClock clock;
	private volatile Running running;
	private volatile boolean abandoned;
	private final List<ReportedFinding> wholeSeries = new ArrayList<>();
	private final Map<Matter, Sightings> sightings = new LinkedHashMap<>();
	private final Map<String, Set<String>> silencedBy = new HashMap<>();

	SeriesCheck(SeriesPlan plan, BoatsOfSeries wanted, List<LoadedRule> rules, ProfileInForce profile, RuleGuard guard,
			Predicate<Origin> known, BooleanSupplier cancelled, CheckClock clock) {
		this.rules = rules;
		rules.forEach(rule -> silencedBy.put(rule.description().id(), rule.description().silencedBy()));
		this.profile = profile;
		this.guard = guard;
		this.known = known;
		this.cancelled = cancelled;
		this.clock = clock;
		this.plan = plan;
		this.boats = wanted.boats();
		this.combinations = wanted.combinations();
		this.allOrderable = wanted.allOrderable();
		this.allSold = wanted.allSold();
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

	private record Running(String rule, long sinceNanos) {
	}

	/** Runs the rules on the series and on every boat. */
	void run() {
		for (LoadedRule rule : rules) {
			if (rule.rule() instanceof SeriesRule ofSeries) {
				SeriesUnderCheck series = new SeriesUnderCheck(plan.outline(), boats, allOrderable && allSold, plan::boat,
						profile.rules().get(rule.description().id()), profile.demands());
				ofSeries(run(rule, () -> ofSeries.check(series)));
			}
		}
		for (int number = 0; number < boats.size(); number++) {
			if (cancelled.getAsBoolean()) {
				throw new CancellationException();
			}
			Boat boat = plan.boat(boats.get(number));
			Figures figures = new Figures(boat);
			Map<String, List<Finding>> found = new LinkedHashMap<>();
			for (LoadedRule rule : rules) {
				if (rule.rule() instanceof BoatRule ofBoat) {
					BoatUnderCheck under = new BoatUnderCheck(figures, profile.rules().get(rule.description().id()), profile.demands());
					List<Finding> findings = run(rule, () -> ofBoat.check(under));
					if (!findings.isEmpty()) {
						found.put(rule.description().id(), findings);
					}
				}
			}
			see(number, found);
		}
	}

	private List<Finding> run(LoadedRule rule, Supplier<List<Finding>> look) {
		running = new Running(rule.description().id(), System.nanoTime());
		List<Finding> findings = guard.run(rule, look, known);
		clock.spent(rule.description().id(), System.nanoTime() - running.sinceNanos);
		running = null;
		if (abandoned) {
			throw new CancellationException();
		}
		return findings;
	}

	private void ofSeries(List<Finding> findings) {
		findings.forEach(each -> wholeSeries.add(new ReportedFinding(each, new Occurrence(plan.name(), true, "", List.of(), 0))));
	}

	private void see(int boat, Map<String, List<Finding>> found) {
		Silencing silencing = new Silencing(found, silencedBy);
		for (List<Finding> ofRule : found.values()) {
			for (Finding finding : ofRule) {
				Matter matter = new Matter(finding.rule(), finding.element(), finding.key(), finding.severity(), silencing.of(finding));
				sightings.computeIfAbsent(matter, each -> new Sightings()).add(boat, finding);
			}
		}
	}

	/** The rule that has been busy with one boat for longer than this, if there is one. For the thread that watches. */
	Optional<String> ruleRunningLongerThan(Duration limit) {
		return Optional.ofNullable(running).filter(busy -> System.nanoTime() - busy.sinceNanos > limit.toNanos()).map(Running::rule);
	}

	/** Lets the thread that runs this end as soon as the rule lets go of it. For the thread that watches. */
	void abandon() {
		abandoned = true;
	}

	/**
	 * The findings of the rules that did not fail, each with where it occurs.
	 *
	 * @param silenced collects those that others make meaningless
	 */
	List<ReportedFinding> findings(List<SetAside> silenced) {
		List<SortedSet<String>> options = new ArrayList<>();
		boats.subList(0, combinations).forEach(boat -> options.add(new TreeSet<>(boat.options())));
		SmallestCondition conditions = new SmallestCondition(plan.options().options(), options);
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
		return new Occurrence(plan.name(), onAll, condition, hulls, seen.cardinality());
	}

	/** Where not all combinations were checked no condition is known to be exact, so the plainest boat stands for the others. */
	private String boatsInWords(BitSet ordered) {
		return ordered.stream().mapToObj(number -> boats.get(number).options()).min(Comparator.comparingInt(SortedSet::size))
				.map(options -> "for example " + (options.isEmpty() ? "no option" : String.join(" and ", options)))
				.orElse("");
	}
}
