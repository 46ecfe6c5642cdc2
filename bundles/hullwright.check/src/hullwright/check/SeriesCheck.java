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
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Checks the boats of one series, and the series itself.
 */
final class SeriesCheck {

	private final SeriesPlan plan;
	private final List<Selection> boats;
	private final boolean allOrderable;
	private final boolean allSold;
	private final List<LoadedRule> rules;
	private final ProfileInForce profile;
	private final RuleGuard guard;
	private final Predicate<Origin> known;
	private final CheckObserver observer;
	private final CheckClock clock;
	private volatile int checked;
	private volatile Running running;
	private volatile boolean abandoned;
	private final SeriesFindings findings;
	private final Map<String, Set<String>> silencedBy = new HashMap<>();

	SeriesCheck(SeriesPlan plan, BoatsOfSeries wanted, List<LoadedRule> rules, ProfileInForce profile, RuleGuard guard,
			Predicate<Origin> known, CheckObserver observer, CheckClock clock) {
		this.rules = rules;
		rules.forEach(rule -> silencedBy.put(rule.description().id(), rule.description().silencedBy()));
		this.profile = profile;
		this.guard = guard;
		this.known = known;
		this.observer = observer;
		this.clock = clock;
		this.plan = plan;
		this.boats = wanted.boats();
		this.findings = new SeriesFindings(plan.name(), plan.options().options(), wanted);
		this.allOrderable = wanted.allOrderable();
		this.allSold = wanted.allSold();
	}

	private record Running(String rule, long sinceNanos) {
	}

	/** Runs the rules on the series and on every boat. */
	void run() {
		for (LoadedRule rule : rules) {
			if (rule.rule() instanceof SeriesRule ofSeries) {
				SeriesUnderCheck series = new SeriesUnderCheck(plan.outline(), boats, allOrderable && allSold, plan::boat,
						profile.rules().get(rule.description().id()), profile.demands());
				findings.ofSeries(run(rule, () -> ofSeries.check(series)));
			}
		}
		for (int number = 0; number < boats.size(); number++) {
			if (observer.cancelled()) {
				throw new CancellationException();
			}
			Boat boat = plan.boat(boats.get(number));
			Figures figures = new Figures(boat);
			Map<String, List<Finding>> found = new LinkedHashMap<>();
			for (LoadedRule rule : rules) {
				if (rule.rule() instanceof BoatRule ofBoat) {
					BoatUnderCheck under = new BoatUnderCheck(figures, profile.rules().get(rule.description().id()), profile.demands());
					List<Finding> ofRule = run(rule, () -> ofBoat.check(under));
					if (!ofRule.isEmpty()) {
						found.put(rule.description().id(), ofRule);
					}
				}
			}
			see(number, found);
			checked = number + 1;
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

	private void see(int boat, Map<String, List<Finding>> found) {
		Silencing silencing = new Silencing(found, silencedBy);
		found.values().forEach(ofRule -> ofRule.forEach(finding -> findings.onBoat(boat, finding, silencing.of(finding))));
	}

	/** How many boats are done. For the thread that watches. */
	int checked() {
		return checked;
	}

	/** The rule that has been busy with one boat for longer than this, if there is one. For the thread that watches. */
	Optional<String> ruleRunningLongerThan(Duration limit) {
		return Optional.ofNullable(running).filter(busy -> System.nanoTime() - busy.sinceNanos > limit.toNanos()).map(Running::rule);
	}

	/** Lets the thread that runs this end as soon as the rule lets go of it. For the thread that watches. */
	void abandon() {
		abandoned = true;
	}

	/** What was found, once it has run. */
	SeriesFindings findings() {
		return findings;
	}
}
