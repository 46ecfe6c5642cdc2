/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.rules;

import hullwright.check.Checker;
import hullwright.testkit.MutationGuard;
import hullwright.testkit.RulePageTests;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs the pages of the rules that ship.
 */
class RulePagesTest {

	@TestFactory
	Stream<DynamicNode> cabling() {
		return new RulePageTests(Checker.create()).ofBundle("hullwright.rules.cabling");
	}

	@TestFactory
	Stream<DynamicNode> pagesNoticeRulesThatAreWrong() {
		return new MutationGuard(Checker.create()).ofBundle("hullwright.rules.cabling");
	}
}
