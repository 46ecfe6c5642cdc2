/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.check.baseline.Baseline;
import hullwright.check.plugin.HousePlugins;
import hullwright.check.plugin.TrustedPlugins;
import hullwright.network.Boat;
import hullwright.network.Origin;
import hullwright.resolve.SeriesPlan;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.edit.FixProposal;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.Occurrence;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
import hullwright.rules.report.SeriesCoverage;
import hullwright.rules.report.SetAside;
import hullwright.rules.report.SourceFile;
import hullwright.spec.Series;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The engine. One instance serves a session: a rule that fails stays off until the next. Safe for use by several threads;
 * reading text is done by one at a time, everything after it by all at once.
 */
public final class Checker {

	/** EMF links lazily and the language's services are shared, so texts are read by one thread at a time. */
	private static final Object READING = new Object();

	/** Rules take microseconds; one that takes this long for one boat will not end. */
	private static final Duration RULE_LIMIT = Duration.ofSeconds(10);

	private final HouseRules house;
	private final SpecReader reader = new SpecReader();
	/** Plans of series whose file and imports have not changed since; the series goes when its file is read again. */
	private final Map<Series, SeriesPlan> plans = new WeakHashMap<>();
	private final KnownFindings known = new KnownFindings();

	/**
	 * An engine with the rules of a set.
	 *
	 * @param ruleLimit how long a rule may take for one boat
	 */
	Checker(RuleSet rules, Duration ruleLimit) {
		this(new HouseRules(rules, Optional.empty(), ruleLimit));
	}

	private Checker(HouseRules house) {
		this.house = house;
	}

	/** An engine with all rules that are contributed, inside OSGi or on the class path. It trusts no plugin, whoever runs it. */
	public static Checker create() {
		return with(RuleSet.in(Contributions.registry()));
	}

	/** An engine with all rules that are contributed, and those of the plugins that a user trusts. */
	public static Checker create(TrustedPlugins trust) {
		return new Checker(new HouseRules(RuleSet.in(Contributions.registry()), Optional.of(trust), RULE_LIMIT));
	}

	/** An engine with these rules and no others, such as for tests of rules. */
	public static Checker with(RuleSet rules) {
		return new Checker(rules, RULE_LIMIT);
	}

	/** What is in force for a project: each rule as its profile leaves it. */
	public RulesInForce inForce(Snapshot snapshot) {
		synchronized (READING) {
			return RulesInForce.of(reader.read(snapshot), house.of(snapshot));
		}
	}

	/** The rules that ship, as they were found. */
	public RuleSet rules() {
		return house.shipped();
	}

	/** The rules for a project: those that ship, and those of the house that are trusted. */
	public RuleSet rules(Snapshot snapshot) {
		return house.of(snapshot).rules();
	}

	/** The plugins that a project and its user have. */
	public HousePlugins plugins(Snapshot snapshot) {
		return house.of(snapshot).plugins();
	}

	/** Checks a project. Whatever the texts are, it returns a report and does not throw. */
	public CheckReport check(CheckRequest request) {
		return check(request, () -> false);
	}

	/**
	 * Checks a project, unless it is called off.
	 *
	 * @param observer looks on
	 * @throws java.util.concurrent.CancellationException if it is called off
	 */
	public CheckReport check(CheckRequest request, CheckObserver observer) {
		return check(request, observer, new CheckClock());
	}

	/**
	 * Checks a project, unless it is called off.
	 *
	 * @param observer looks on
	 * @param clock adds up what the time is spent on
	 * @throws java.util.concurrent.CancellationException if it is called off
	 */
	public CheckReport check(CheckRequest request, CheckObserver observer, CheckClock clock) {
		long begun = System.nanoTime();
		ProjectRules rules = house.of(request.snapshot());
		ReadProject project;
		ProfileInForce profile;
		PlannedSeries planned;
		synchronized (READING) {
			project = reader.read(request.snapshot());
			begun = lap(clock, CheckClock.Stage.READING, begun);
			profile = ProfileInForce.of(project, rules);
			planned = PlannedSeries.of(project, request, plans);
			known.keepOnly(plans.values());
		}
		List<SeriesPlan> wanted = planned.plans();
		List<String> gaps = new ArrayList<>(rules.gaps());
		gaps.addAll(planned.gaps());
		List<ReportedFinding> findings = new ArrayList<>();
		rules.pluginsOff().forEach(problem -> findings.add(ofText(problem)));
		project.problems().stream().filter(problem -> planned.files().contains(problem.origin().file())).forEach(problem -> findings.add(ofText(problem)));
		profile.problems().forEach(problem -> findings.add(ofText(problem)));
		begun = lap(clock, CheckClock.Stage.PLANNING, begun);
		BoatsChecked boats = checkBoats(request, project, wanted, rules, profile, gaps, observer, clock);
		begun = lap(clock, CheckClock.Stage.CHECKING, begun);
		rules.failures().forEach(failure -> {
			findings.add(ofText(failure));
			gaps.add("rule " + failure.element() + " failed and is off for the rest of the session");
		});
		List<SetAside> setAside = new ArrayList<>(boats.silenced());
		List<RuleRun> runs = rules.runs(profile);
		boolean everyBoat = request.boats() instanceof WantedBoats.All && boats.coverage().stream().allMatch(SeriesCoverage::allCombinations);
		Predicate<String> looked = rule -> everyBoat && runs.stream().anyMatch(run -> run.rule().equals(rule) && run.state() == RuleRun.State.RUN);
		Waivers waivers = new Waivers(wanted, request.asOf());
		List<ReportedFinding> counting = setAside(boats.findings(), waivers::of, setAside);
		waivers.problems(rules::lacks, looked).forEach(problem -> findings.add(ofText(problem)));
		if (request.baseline().isPresent()) {
			counting = setAside(counting, inBaseline(request.baseline().get()), setAside);
			stale(request.baseline().get(), counting, setAside, looked).forEach(problem -> findings.add(ofText(problem)));
		}
		findings.addAll(counting);
		findings.sort(ORDER);
		setAside.sort(Comparator.comparing(SetAside::finding, ORDER));
		lap(clock, CheckClock.Stage.SORTING, begun);
		return new CheckReport(request.asOf(), findings, setAside, gaps, runs, boats.coverage(), sources(project, rules), request.baseline().map(Baseline::use));
	}

	private static List<SourceFile> sources(ReadProject project, ProjectRules rules) {
		return Stream.concat(project.sources().stream(), rules.sources().stream()).sorted(Comparator.comparing(SourceFile::file)).toList();
	}

	private static long lap(CheckClock clock, CheckClock.Stage stage, long begun) {
		long now = System.nanoTime();
		clock.spent(stage, now - begun);
		return now;
	}

	/** The findings that nothing sets aside. */
	private static List<ReportedFinding> setAside(List<ReportedFinding> findings, Function<ReportedFinding, Optional<SetAside.Why>> why, List<SetAside> setAside) {
		List<ReportedFinding> counting = new ArrayList<>();
		for (ReportedFinding finding : findings) {
			why.apply(finding).ifPresentOrElse(reason -> setAside.add(new SetAside(finding, reason)), () -> counting.add(finding));
		}
		return counting;
	}

	private static Function<ReportedFinding, Optional<SetAside.Why>> inBaseline(Baseline baseline) {
		return reported -> baseline.covers(reported.finding()) ? Optional.of(new SetAside.InBaseline()) : Optional.empty();
	}

	/** What the baseline accepts and no rule finds any more, waived or silenced. */
	private static List<Finding> stale(Baseline baseline, List<ReportedFinding> counting, List<SetAside> setAside, Predicate<String> looked) {
		List<Finding> found = Stream.concat(counting.stream(), setAside.stream().map(SetAside::finding)).map(ReportedFinding::finding).toList();
		return baseline.stale(found).stream().filter(each -> looked.test(each.rule()))
				.map(each -> Finding.ofText(ProjectProblem.BASELINE_STALE, Severity.ADVICE, Origin.nowhere(each.element()),
						"the baseline accepts " + each.rule() + " on " + each.element() + ", which is no longer found; accept the findings anew", List.of()))
				.toList();
	}

	/** What the rules found on the boats. */
	private record BoatsChecked(List<ReportedFinding> findings, List<SetAside> silenced, List<SeriesCoverage> coverage) {
	}

	/** What stands in the texts of projects, and how more is written into them. */
	public ProjectTexts texts() {
		return new ProjectTexts(READING, reader, plans);
	}

	/** The boats of a request as they will be built, without a check; files with problems contribute none. */
	public BoatsRead boats(CheckRequest request) {
		PlannedSeries planned;
		List<Finding> problems;
		synchronized (READING) {
			ReadProject project = reader.read(request.snapshot());
			planned = PlannedSeries.of(project, request, plans);
			problems = project.problems().stream().filter(problem -> planned.files().contains(problem.origin().file())).toList();
		}
		List<String> gaps = new ArrayList<>(planned.gaps());
		List<Boat> boats = new ArrayList<>();
		List<String> unfit = new ArrayList<>();
		for (SeriesPlan plan : planned.plans()) {
			BoatsOfSeries ofSeries = BoatsOfSeries.wanted(plan, request.boats());
			ofSeries.gap().ifPresent(ofSeries.boats().isEmpty() ? unfit::add : gaps::add);
			ofSeries.boats().forEach(selection -> boats.add(plan.boat(selection)));
		}
		if (boats.isEmpty()) {
			gaps.addAll(unfit);
		}
		return new BoatsRead(boats, planned.plans().stream().map(SeriesPlan::outline).toList(), problems, gaps);
	}

	private static final Comparator<ReportedFinding> ORDER = Comparator
			.comparing((ReportedFinding reported) -> reported.finding().origin().file())
			.thenComparing(reported -> reported.finding().origin().offset())
			.thenComparing(reported -> reported.finding().severity(), Comparator.reverseOrder())
			.thenComparing(reported -> reported.finding().rule())
			.thenComparing(reported -> reported.finding().element())
			.thenComparing(reported -> reported.finding().key());

	private static ReportedFinding ofText(Finding problem) {
		return new ReportedFinding(problem, Occurrence.TEXT);
	}

	private BoatsChecked checkBoats(CheckRequest request, ReadProject project, List<SeriesPlan> wanted, ProjectRules rules, ProfileInForce profile, List<String> gaps,
			CheckObserver observer, CheckClock clock) {
		List<LoadedRule> running = rules.rules().rules().stream().filter(rule -> profile.rules().get(rule.description().id()).on()).toList();
		Predicate<Origin> places = new KnownPlaces(request.snapshot(), project);
		BoatsChecked checked = new BoatsChecked(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
		List<String> unfit = new ArrayList<>();
		List<BoatsOfSeries> wantedBoats = wanted.stream().map(plan -> BoatsOfSeries.wanted(plan, request.boats())).toList();
		FleetProgress progress = new FleetProgress(observer, wantedBoats.stream().mapToInt(boats -> boats.boats().size()).sum());
		for (int i = 0; i < wanted.size(); i++) {
			SeriesPlan plan = wanted.get(i);
			BoatsOfSeries boats = wantedBoats.get(i);
			List<ReportedFinding> found = List.of();
			if (!boats.boats().isEmpty() || boats.allOrderable()) {
				var circumstances = KnownFindings.Circumstances.of(request.boats(), running, profile);
				SeriesFindings done = known.of(plan, circumstances).orElseGet(() -> rules.watch()
						.run(() -> new SeriesCheck(plan, boats, running, profile, rules.guard(), places, observer, clock), progress::within).findings());
				known.put(plan, circumstances, done);
				found = done.reported(rules.guard(), checked.silenced);
				checked.findings.addAll(found);
			}
			progress.done(boats.boats().size());
			// a finding that says why there is no boat says it better
			if (!boats.boats().isEmpty() || found.isEmpty()) {
				boats.gap().ifPresent(boats.boats().isEmpty() ? unfit::add : gaps::add);
			}
			if (!boats.boats().isEmpty()) {
				checked.coverage.add(new SeriesCoverage(plan.name(), plan.devices(), boats.combinations(), boats.allOrderable(),
						boats.boats().size() - boats.combinations(), boats.allSold(), plan.origin()));
			}
		}
		// a hull or an option that one series has and others have not is no gap; one that none has is
		if (checked.coverage.isEmpty() || request.boats() instanceof WantedBoats.All) {
			gaps.addAll(unfit);
		}
		return checked;
	}

	/**
	 * What can be done about a finding, as changes of text. Each has been tried on a copy: it removes the finding and adds
	 * none that weighs as much or more.
	 *
	 * @param request the request whose report holds the finding
	 */
	public List<FixProposal> proposals(CheckRequest request, ReportedFinding reported) {
		return new Mending(this).proposals(request, reported);
	}

	/** The fixes of a finding as changes of text, untried. */
	List<FixProposal> rendered(CheckRequest request, ReportedFinding reported) {
		synchronized (READING) {
			return new FixRendering(reader.read(request.snapshot())).render(reported);
		}
	}
}
