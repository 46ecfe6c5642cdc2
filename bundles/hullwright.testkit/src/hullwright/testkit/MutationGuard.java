/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.testkit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.check.Checker;
import hullwright.check.LoadedRule;
import hullwright.check.RuleSet;
import hullwright.check.Snapshot;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Rule;
import hullwright.rules.RuleDescription;
import hullwright.rules.SeriesRule;
import hullwright.rules.SeriesUnderCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;

/**
 * Tests the pages of rules themselves: a page must notice if its rule finds nothing any more, finds what it should not, or finds the
 * opposite.
 */
public final class MutationGuard {

	private final RuleSet rules;

	/** Guards the pages of the rules of an engine. */
	public MutationGuard(Checker checker) {
		rules = checker.rules(Snapshot.of(Map.of()));
	}

	/** What may become of a rule by mistake. */
	private enum Mutation {
		/** It finds nothing. */
		SILENT,
		/** It finds something on every boat. */
		SHRILL,
		/** It finds something exactly where there is nothing to find. */
		NEGATED;

		List<Finding> of(List<Finding> sound, Finding more) {
			return switch (this) {
			case SILENT -> List.of();
			case SHRILL -> plus(sound, more);
			case NEGATED -> sound.isEmpty() ? List.of(more) : List.of();
			};
		}

		private static List<Finding> plus(List<Finding> sound, Finding more) {
			List<Finding> both = new ArrayList<>(sound);
			both.add(more);
			return both;
		}
	}

	private record MutatedOnBoats(BoatRule rule, Mutation mutation) implements BoatRule {

		@Override
		public RuleDescription description() {
			return rule.description();
		}

		@Override
		public List<Finding> check(BoatUnderCheck boat) {
			return mutation.of(rule.check(boat), boat.finding(boat.boat().origin()).key("mutated").build());
		}
	}

	private record MutatedOnSeries(SeriesRule rule, Mutation mutation) implements SeriesRule {

		@Override
		public RuleDescription description() {
			return rule.description();
		}

		@Override
		public List<Finding> check(SeriesUnderCheck series) {
			return mutation.of(rule.check(series), series.finding(series.series().origin()).key("mutated").build());
		}
	}

	private static Rule mutated(Rule rule, Mutation mutation) {
		return rule instanceof BoatRule ofBoat ? new MutatedOnBoats(ofBoat, mutation) : new MutatedOnSeries((SeriesRule) rule, mutation);
	}

	/** Tests of the pages of all rules that a bundle contributes; fails if it contributes none. */
	public Stream<DynamicNode> ofBundle(String contributor) {
		List<LoadedRule> ofBundle = rules.rules().stream().filter(rule -> rule.contributor().equals(contributor)).toList();
		assertFalse(ofBundle.isEmpty(), "no rules of " + contributor + " were found; problems: " + rules.problems());
		return ofBundle.stream().map(rule -> DynamicContainer.dynamicContainer(rule.description().id(), Stream.of(Mutation.values())
				.map(mutation -> DynamicTest.dynamicTest(mutation.name().toLowerCase(Locale.ROOT), () -> isNoticed(rule, mutation)))));
	}

	private void isNoticed(LoadedRule rule, Mutation mutation) {
		LoadedRule mutated = new LoadedRule(mutated(rule.rule(), mutation), rule.description(), rule.contributor(), rule.page());
		List<LoadedRule> others = new ArrayList<>(rules.rules());
		others.replaceAll(each -> each == rule ? mutated : each);
		RulePageTests tests = new RulePageTests(Checker.with(new RuleSet(others, List.of())));
		assertTrue(tests.of(mutated).anyMatch(MutationGuard::fails), "no example of the page notices a rule that is " + mutation.name().toLowerCase(Locale.ROOT));
	}

	private static boolean fails(DynamicNode node) {
		try {
			((DynamicTest) node).getExecutable().execute();
			return false;
		} catch (Throwable failure) {
			return true;
		}
	}
}
