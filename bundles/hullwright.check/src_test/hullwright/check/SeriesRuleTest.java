/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.network.Boat;
import hullwright.network.BoatSeries;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Rule;
import hullwright.rules.RuleDescription;
import hullwright.rules.SeriesRule;
import hullwright.rules.SeriesUnderCheck;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Rules that look at a series as a whole, and figures that rules of a house share.
 */
class SeriesRuleTest {

	private static final String SERIES = Boats.skerry("""
			options { far "Far"; idle "Idle" requires far }
			hull 1 with far
			hull 2
			""", """
			drop bow.1 via 1 m of light to radar : instrumentDisplay when far
			""");

	private record OnSeries(RuleDescription description, Function<SeriesUnderCheck, List<Finding>> body) implements SeriesRule {
		@Override
		public List<Finding> check(SeriesUnderCheck series) {
			return body.apply(series);
		}
	}

	private record OnBoat(RuleDescription description, Function<BoatUnderCheck, List<Finding>> body) implements BoatRule {
		@Override
		public List<Finding> check(BoatUnderCheck boat) {
			return body.apply(boat);
		}
	}

	private static RuleDescription described(String id, String message) {
		return RuleDescription.of(id, id, Severity.WARNING, message, "the house");
	}

	private static CheckReport check(WantedBoats boats, Rule... rules) {
		List<LoadedRule> loaded = new ArrayList<>();
		for (Rule rule : rules) {
			loaded.add(new LoadedRule(rule, rule.description(), "house.rules"));
		}
		CheckRequest all = Boats.request(SERIES);
		return new Checker(new RuleSet(loaded, List.of()), Duration.ofSeconds(10)).check(new CheckRequest(all.snapshot(), Set.of(), boats, Boats.DAY));
	}

	/** An option that no condition names changes nothing. */
	private static final Rule UNUSED = new OnSeries(described("house/option-unused", "{option} changes nothing"), series -> series.series().options().stream()
			.filter(option -> !series.series().conditions().contains(option.name()))
			.map(option -> series.finding(option.origin()).value("option", option.name()).build()).toList());

	@Test
	void aRuleOfASeriesLooksOnceAtAllThatIsOfferedAndSold() {
		CheckReport report = check(new WantedBoats.All(), UNUSED);
		assertEquals(List.of("warning house/option-unused: idle changes nothing"), Boats.findings(report));
		assertEquals(3, report.findings().get(0).finding().origin().line());
		List<BoatSeries> seen = new ArrayList<>();
		List<Boat> boats = new ArrayList<>();
		check(new WantedBoats.All(), new OnSeries(described("house/look", "x"), series -> {
			seen.add(series.series());
			series.boats().forEach(boats::add);
			assertTrue(series.isComplete());
			return List.of();
		}));
		assertEquals(1, seen.size());
		assertEquals(List.of("far", "idle"), seen.get(0).options().stream().map(BoatSeries.Option::name).toList());
		assertEquals(Set.of("far"), seen.get(0).options().get(1).requires());
		assertEquals(List.of(Set.of("far"), Set.of()), seen.get(0).hulls().stream().map(BoatSeries.SoldHull::options).toList());
		assertEquals(5, boats.size(), "none, far, far and idle, and two hulls");
	}

	@Test
	void withOneBoatItIsToldThatThereAreMore() {
		List<Boolean> complete = new ArrayList<>();
		check(new WantedBoats.WithOptions(new TreeSet<>()), new OnSeries(described("house/look", "x"), series -> {
			complete.add(series.isComplete());
			return List.of();
		}));
		assertEquals(List.of(false), complete);
	}

	@Test
	void oneThatThrowsIsNamedAndOthersRun() {
		CheckReport report = check(new WantedBoats.All(), UNUSED, new OnSeries(described("house/broken", "x"), series -> {
			throw new IllegalStateException("out of paint");
		}));
		assertTrue(Boats.findings(report).stream().anyMatch(each -> each.contains("out of paint")), Boats.findings(report) + "");
		assertTrue(Boats.findings(report).contains("warning house/option-unused: idle changes nothing"));
	}

	private record Heads(int count) {
	}

	@Test
	void figuresOfAHouseAreWorkedOutOnceForEachBoat() {
		List<Heads> seen = new ArrayList<>();
		Function<BoatUnderCheck, List<Finding>> look = boat -> {
			seen.add(boat.figures().derived(Heads.class, figures -> new Heads(figures.boat().networks().get(0).drops().size())));
			return List.of();
		};
		check(new WantedBoats.WithOptions(new TreeSet<>(Set.of("far"))), new OnBoat(described("house/one", "x"), look), new OnBoat(described("house/other", "x"), look));
		assertEquals(2, seen.size());
		assertSame(seen.get(0), seen.get(1));
		assertEquals(1, seen.get(0).count());
	}
}
