/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.rules;

import hullwright.check.Checker;
import hullwright.testkit.MutationGuard;
import hullwright.testkit.RulePageTests;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs the pages of the rules that ship.
 */
class RulePagesTest {

	private static final List<String> FAMILIES = List.of("cabling", "connectors", "data", "power", "series");

	@TestFactory
	Stream<DynamicNode> pages() {
		return ofEachFamily(new RulePageTests(Checker.create())::ofBundle);
	}

	@TestFactory
	Stream<DynamicNode> pagesNoticeRulesThatAreWrong() {
		return ofEachFamily(new MutationGuard(Checker.create())::ofBundle);
	}

	private static Stream<DynamicNode> ofEachFamily(Function<String, Stream<DynamicNode>> tests) {
		return FAMILIES.stream().map(family -> DynamicContainer.dynamicContainer(family, tests.apply("hullwright.rules." + family)));
	}
}
