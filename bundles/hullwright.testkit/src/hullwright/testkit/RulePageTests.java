/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.LoadedRule;
import hullwright.check.RuleSet;
import hullwright.check.Snapshot;
import hullwright.rules.edit.FixProposal;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.testkit.RulePage.Example;
import hullwright.testkit.RulePage.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;

/**
 * Makes tests of the pages of rules: each page has its headings, an example that breaks the rule and one that keeps it; each
 * example gives exactly the findings of its rule that are marked in it, and no problem of the text; each fix is shown and makes
 * exactly the text that is shown. All rules run, so that a rule that silences another can be shown; findings of others count
 * where the example marks one of them.
 */
public final class RulePageTests {

	private static final String FILE = "example.hull";
	private static final LocalDate ANY_DAY = LocalDate.of(2030, 1, 1);

	private final Checker checker;

	/** Tests with the rules of an engine. */
	public RulePageTests(Checker checker) {
		this.checker = checker;
	}

	/** Tests of the pages of all rules that a bundle contributes; fails if it contributes none. A plugin of the user is named by name and version. */
	public Stream<DynamicNode> ofBundle(String contributor) {
		RuleSet all = checker.rules(Snapshot.of(Map.of()));
		List<LoadedRule> rules = all.rules().stream().filter(rule -> rule.contributor().equals(contributor)).toList();
		assertFalse(rules.isEmpty(), "no rules of " + contributor + " were found; problems: " + all.problems());
		return rules.stream().map(rule -> DynamicContainer.dynamicContainer(rule.description().id(), of(rule)));
	}

	/** Tests of the page of one rule. */
	Stream<DynamicNode> of(LoadedRule rule) {
		RulePage page = RulePage.of(rule.page().orElseGet(() -> fail("there is no page " + rule.rule().getClass().getSimpleName() + ".md beside the class")));
		List<DynamicNode> tests = new ArrayList<>();
		tests.add(DynamicTest.dynamicTest("page has its headings", () -> assertEquals(RulePage.REQUIRED_HEADINGS, page.headings())));
		tests.add(DynamicTest.dynamicTest("page shows what breaks and what keeps the rule", () -> {
			assertTrue(page.examples().stream().anyMatch(example -> breaks(example, rule)), "no example breaks the rule");
			assertTrue(page.examples().stream().anyMatch(example -> example.kind() == Kind.KEEPS), "no example keeps the rule");
		}));
		for (int at = 0; at < page.examples().size(); at++) {
			Example example = page.examples().get(at);
			Example next = at + 1 < page.examples().size() ? page.examples().get(at + 1) : null;
			Example before = at > 0 ? page.examples().get(at - 1) : null;
			tests.add(DynamicTest.dynamicTest(example.kind().name().toLowerCase(java.util.Locale.ROOT) + ", line " + example.line(),
					() -> check(rule, example, before, next)));
		}
		return tests.stream();
	}

	private static boolean breaks(Example example, LoadedRule rule) {
		return example.kind() == Kind.BREAKS
				&& MarkedText.of(example.text()).expected().stream().anyMatch(expected -> expected.text().contains(" " + rule.description().id() + ": "));
	}

	private void check(LoadedRule rule, Example example, Example before, Example next) {
		MarkedText marked = MarkedText.of(example.text());
		CheckReport report = checker.check(request(marked));
		List<ReportedFinding> shown = report.findings().stream().filter(reported -> concerns(reported, rule, marked)).toList();
		assertEquals(lines(marked.expected()), lines(shown.stream().map(Expectation::of).toList()));
		assertEquals(List.of(), report.gaps());
		assertEquals(example.kind() == Kind.BREAKS, !marked.expected().isEmpty(), "only what breaks a rule has findings");
		if (example.kind() == Kind.BREAKS) {
			boolean mendable = shown.stream().anyMatch(reported -> !reported.finding().fixes().isEmpty());
			assertEquals(mendable, next != null && next.kind() == Kind.MENDED, "a fix is shown by the example after it");
		} else if (example.kind() == Kind.MENDED) {
			assertTrue(before != null && before.kind() == Kind.BREAKS, "what is mended stands after what breaks");
			assertEquals(marked.text(), mended(rule, MarkedText.of(before.text())));
		}
	}

	/** An example is about its rule: what others say of it counts where the example marks them, and problems of the text always do. */
	private boolean concerns(ReportedFinding reported, LoadedRule rule, MarkedText marked) {
		String id = reported.finding().rule();
		return id.equals(rule.description().id()) || isOfText(id)
				|| marked.expected().stream().anyMatch(expected -> expected.text().contains(" " + id + ": "));
	}

	private boolean isOfText(String id) {
		return checker.rules(Snapshot.of(Map.of())).rules().stream().noneMatch(rule -> rule.description().id().equals(id));
	}

	private String mended(LoadedRule rule, MarkedText broken) {
		CheckRequest request = request(broken);
		ReportedFinding finding = checker.check(request).findings().stream()
				.filter(reported -> reported.finding().rule().equals(rule.description().id()))
				.filter(reported -> !reported.finding().fixes().isEmpty())
				.findFirst()
				.orElseGet(() -> fail("no finding of the example before has a fix"));
		List<FixProposal> proposals = checker.proposals(request, finding);
		assertFalse(proposals.isEmpty(), "no fix removes its finding");
		return proposals.get(0).appliedTo(FILE, broken.text());
	}

	private static CheckRequest request(MarkedText marked) {
		return CheckRequest.ofAll(Snapshot.of(Map.of(FILE, marked.text())), ANY_DAY);
	}

	private static String lines(List<Expectation> expectations) {
		return expectations.stream().map(Expectation::toString).collect(Collectors.joining("\n"));
	}
}
