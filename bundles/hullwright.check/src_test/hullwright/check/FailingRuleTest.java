/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.network.Origin;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.RuleRun;
import java.time.Duration;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * A rule of a house that fails is named and switched off; all others say what they say without it.
 */
class FailingRuleTest {

	private static final String BOAT = Boats.skerry("", "drop bow.1 via 7 m of light to radar : instrumentDisplay");

	private record HouseRule(Function<BoatUnderCheck, List<Finding>> body) implements BoatRule {
		@Override
		public RuleDescription description() {
			return RuleDescription.of("house/never-again", "Never again", Severity.WARNING, "again", "the house");
		}

		@Override
		public List<Finding> check(BoatUnderCheck boat) {
			return body.apply(boat);
		}
	}

	@TestFactory
	Stream<DynamicTest> failures() {
		return Stream.of(
				failure("throws", boat -> {
					throw new IllegalStateException("out of paint");
				}, "out of paint"),
				failure("overflows the stack", FailingRuleTest::forever, "StackOverflowError"),
				failure("never ends", FailingRuleTest::endless, "took longer than 1 s"),
				failure("returns nothing", boat -> null, "returned nothing"),
				failure("reports a null", boat -> java.util.Arrays.asList((Finding) null), "nothing as a finding"),
				failure("speaks in the name of another", boat -> List.of(Finding.ofText("cabling/drop-too-long", Severity.ERROR,
						Origin.nowhere("x"), "nonsense", List.of())), "in the name of rule cabling/drop-too-long"),
				failure("tells of a place that it made up", boat -> List.of(boat.finding(new Origin("Skerry.radar", "elsewhere.hull", 0, 1, 1, 1)).build()),
						"at a place that is in none of the texts"),
				failure("tells of a place beyond the end", boat -> List.of(boat.finding(new Origin("Skerry.radar", boat.boat().origin().file(), 99_999, 1, 1, 1)).build()),
						"at a place that is in none of the texts"),
				failure("throws an error of its own", boat -> {
					throw new ExceptionInInitializerError("no catalog");
				}, "no catalog"),
				failure("returns a list that throws", boat -> new AbstractList<>() {
					@Override
					public Finding get(int index) {
						throw new IllegalStateException("out of varnish");
					}

					@Override
					public int size() {
						return 1;
					}
				}, "out of varnish"));
	}

	@SuppressWarnings("InfiniteLoopStatement")
	private static List<Finding> endless(BoatUnderCheck boat) {
		while (true) {
			Thread.onSpinWait();
		}
	}

	private static List<Finding> forever(BoatUnderCheck boat) {
		return forever(boat);
	}

	private static DynamicTest failure(String what, Function<BoatUnderCheck, List<Finding>> body, String reason) {
		return DynamicTest.dynamicTest(what, () -> {
			List<LoadedRule> rules = new ArrayList<>(Checker.create().rules().rules());
			BoatRule failing = new HouseRule(body);
			rules.add(new LoadedRule(failing, failing.description(), "house.rules"));
			Checker checker = new Checker(new RuleSet(rules, List.of()), Duration.ofSeconds(1));
			CheckReport report = checker.check(Boats.request(BOAT));
			List<String> findings = Boats.findings(report);
			assertTrue(findings.containsAll(Boats.findings(Boats.check(BOAT))), "the others still run");
			assertTrue(findings.get(0).startsWith("error project/rule-failed: rule house/never-again of bundle house.rules failed"), findings.get(0));
			assertTrue(findings.get(0).contains(reason), findings.get(0));
			assertEquals(2, findings.size());
			assertFalse(report.complete());
			assertEquals(RuleRun.State.FAILED, report.rules().stream().filter(run -> run.rule().startsWith("house/")).findFirst().orElseThrow().state());
			assertEquals(findings, Boats.findings(checker.check(Boats.request(BOAT))), "it stays off");
		});
	}
}
