/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.guards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.LoadedRule;
import hullwright.check.RuleSet;
import hullwright.check.Snapshot;
import hullwright.rules.Rule;
import hullwright.rules.report.CheckReport;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Guards what houses rely on: an id that has been released stays, and each rule is registered and has its page.
 */
class ReleasedRulesTest {

	private final RuleSet rules = Checker.create().rules();

	@Test
	void everyContributionIsARule() {
		assertEquals(List.of(), rules.problems());
	}

	@Test
	void releasedIdsStay() throws IOException {
		try (InputStream list = ReleasedRulesTest.class.getResourceAsStream("/released-rules.txt")) {
			Set<String> released = new String(list.readAllBytes(), StandardCharsets.UTF_8).lines()
					.filter(line -> !line.isBlank() && !line.startsWith("#"))
					.collect(Collectors.toCollection(TreeSet::new));
			Set<String> present = rules.rules().stream().map(rule -> rule.description().id()).collect(Collectors.toCollection(TreeSet::new));
			assertEquals(released, present, "add a new rule to released-rules.txt; never take one away");
		}
	}

	@Test
	void everyRuleClassIsRegistered() {
		Set<String> written = new ClassFileImporter().importPackages("hullwright.rules").stream()
				.filter(type -> type.isAssignableTo(Rule.class) && !type.isInterface())
				.map(JavaClass::getName)
				.collect(Collectors.toCollection(TreeSet::new));
		Set<String> registered = rules.rules().stream().map(rule -> rule.rule().getClass().getName()).collect(Collectors.toCollection(TreeSet::new));
		assertEquals(written, registered);
	}

	/** A parameter of a name that is a word of the language could not be set. */
	@Test
	void everyParameterCanBeSetByAProfile() {
		String settings = rules.rules().stream().map(LoadedRule::description).filter(rule -> !rule.parameters().isEmpty())
				.map(rule -> rule.id() + " { " + rule.parameters().stream().map(each -> each.name() + " " + each.usual()).collect(Collectors.joining("; ")) + " }")
				.collect(Collectors.joining("\n"));
		CheckReport report = Checker.create().check(CheckRequest.ofAll(Snapshot.of(Map.of("yard.hull", "profile Yard from standard {\n" + settings + "\n}\n")),
				LocalDate.of(2030, 1, 1)));
		assertEquals(List.of(), report.findings().stream().map(reported -> reported.finding().message()).toList(), settings);
		assertTrue(settings.contains("power/fuse-missing { wire 1.83 m }"), settings);
	}

	@Test
	void everyRuleHasItsPageUnderItsTitle() {
		assertEquals(List.of(), rules.rules().stream()
				.filter(rule -> !rule.page().orElse("").startsWith("# " + rule.description().title() + "\n"))
				.map(rule -> rule.description().id())
				.toList());
	}

	@Test
	void everyLimitNamesItsSource() {
		for (LoadedRule rule : rules.rules()) {
			assertTrue(!rule.description().source().isBlank(), rule.description().id());
			rule.description().bands().forEach(band -> assertTrue(!band.source().isBlank(), rule.description().id()));
		}
	}
}
