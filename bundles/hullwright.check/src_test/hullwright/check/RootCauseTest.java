/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.network.Drop;
import hullwright.network.Network;
import hullwright.quantity.Length;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.SetAside;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Rules that silence others, and rules with parameters.
 */
class RootCauseTest {

	private static final String BOAT = Boats.skerry("options { far \"Far\" }", """
			drop bow.1 via 1 m of light to radar : instrumentDisplay
			drop stern.1 via 2 m of light to depth : depthTransducer when far
			""");

	private record HouseRule(RuleDescription description, Function<BoatUnderCheck, List<Finding>> body) implements BoatRule {
		@Override
		public List<Finding> check(BoatUnderCheck boat) {
			return body.apply(boat);
		}
	}

	private static RuleDescription described(String id, String message) {
		return RuleDescription.of(id, id, Severity.WARNING, message, "the house");
	}

	/** A finding for each drop. */
	private static BoatRule onEveryDrop(RuleDescription rule) {
		return new HouseRule(rule, boat -> boat.boat().networks().stream().flatMap(network -> network.drops().stream())
				.map(drop -> boat.finding(drop.origin()).value("device", drop.origin().simpleName()).build()).toList());
	}

	/** A finding for each network, which speaks for its drops. */
	private static BoatRule onEveryNetwork(RuleDescription rule) {
		return new HouseRule(rule, boat -> {
			List<Finding> findings = new ArrayList<>();
			for (Network network : boat.boat().networks()) {
				findings.add(boat.finding(network.origin()).covers(network.drops().stream().map(Drop::name).toList()).build());
			}
			return findings;
		});
	}

	private static CheckReport check(Map<String, String> texts, BoatRule... rules) {
		List<LoadedRule> loaded = new ArrayList<>();
		for (BoatRule rule : rules) {
			loaded.add(new LoadedRule(rule, rule.description(), "house.rules"));
		}
		return new Checker(new RuleSet(loaded, List.of()), Duration.ofSeconds(10)).check(CheckRequest.ofAll(Snapshot.of(texts), Boats.DAY));
	}

	private static CheckReport check(BoatRule... rules) {
		return check(Map.of("boat.hull", BOAT), rules);
	}

	@Test
	void theCauseIsToldAndWhatFollowsFromItIsNot() {
		CheckReport report = check(onEveryNetwork(described("house/no-supply", "no supply")),
				onEveryDrop(described("house/too-low", "too low at {device}").silencedBy("house/no-supply")));
		assertEquals(List.of("warning house/no-supply: no supply"), Boats.findings(report));
		assertEquals(2, report.setAside().size());
		assertEquals(2, report.countSetAside(SetAside.Silenced.class));
		assertEquals(new SetAside.Silenced("house/no-supply", "Skerry.instruments"), report.setAside().get(0).why());
	}

	@Test
	void whatTheCauseDoesNotSpeakForIsTold() {
		BoatRule onlyWithOption = new HouseRule(described("house/no-supply", "no supply"),
				boat -> boat.boat().networks().stream().filter(network -> network.drops().size() > 1)
						.map(network -> boat.finding(network.origin()).covers(List.of("Skerry.instruments.depth")).build()).toList());
		CheckReport report = check(onlyWithOption, onEveryDrop(described("house/too-low", "too low at {device}").silencedBy("house/no-supply")));
		assertEquals(List.of("warning house/no-supply: no supply [when far]", "warning house/too-low: too low at radar"), Boats.findings(report));
		assertEquals(1, report.setAside().size());
		assertEquals("Skerry.instruments.depth", report.setAside().get(0).finding().finding().element());
		assertEquals("far", report.setAside().get(0).finding().occurrence().condition());
	}

	@Test
	void rulesThatSilenceEachOtherDoNotSilenceBoth() {
		CheckReport report = check(onEveryDrop(described("house/one", "one {device}").silencedBy("house/other")),
				onEveryDrop(described("house/other", "other {device}").silencedBy("house/one")));
		assertEquals(2, report.findings().size(), Boats.findings(report) + "");
		assertEquals(2, report.setAside().size());
	}

	private static final BoatRule WITH_PARAMETERS = new HouseRule(described("house/reach", "{length} of {count}")
			.with(new Parameter("reach", new Length(3), "how far a hand reaches", "common practice"), new Parameter("hands", 2, "how many hands", "common practice")),
			boat -> List.of(boat.finding(boat.boat().networks().get(0).origin()).value("length", boat.parameter("reach", Length.class))
					.value("count", boat.parameter("hands", Integer.class)).build()));

	private static List<String> withProfile(String profile) {
		return Boats.findings(check(Map.of("boat.hull", BOAT, "yard.hull", profile), WITH_PARAMETERS));
	}

	@Test
	void parametersHaveTheirUsualValuesUnlessTheProfileSetsThem() {
		assertEquals(List.of("warning house/reach: 3 m of 2"), Boats.findings(check(WITH_PARAMETERS)));
		assertEquals(List.of("warning house/reach: 4.5 m of 3"), withProfile("profile Yard from standard { house/reach { reach 4.5 m; hands 3 } }"));
	}

	@Test
	void aParameterOfTheWrongKindIsAnErrorAndTheUsualValueStays() {
		assertEquals(List.of("warning house/reach: 3 m of 2", "error project/profile-setting-wrong: 'reach' of house/reach is length, such as '3 m', not '4 V'",
				"error project/profile-setting-wrong: 'hands' of house/reach is a whole number, such as '2', not '1.5'",
				"error project/profile-setting-wrong: 'feet' is no value that house/reach works with; it has reach, hands"),
				withProfile("profile Yard from standard { house/reach { reach 4 V; hands 1.5; feet 3 } }"));
	}
}
