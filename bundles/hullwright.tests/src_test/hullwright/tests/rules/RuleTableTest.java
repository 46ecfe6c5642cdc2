/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.check.Checker;
import hullwright.check.LoadedRule;
import hullwright.check.Snapshot;
import hullwright.rules.Band;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The table of all rules with their limits and sources is up to date. It is written to {@code target/rules.md}; copy that over
 * {@code bundles/hullwright.rules/reference/rules.md} when rules change.
 */
class RuleTableTest {

	private static final Pattern PUBLISHED = Pattern.compile("public|manual|handbook|leaflet|article of|glossary|response-time analysis|CAN specification");
	private static final Path TABLE = Path.of("..", "hullwright.rules", "reference", "rules.md");

	@Test
	void theTableOfRulesIsUpToDate() throws IOException {
		List<RuleDescription> rules = Checker.create().rules(Snapshot.of(Map.of())).rules().stream()
				.filter(rule -> rule.contributor().startsWith("hullwright.rules."))
				.map(LoadedRule::description)
				.sorted(Comparator.comparing(RuleDescription::id))
				.toList();
		String table = """
				<!-- Generated from the rules; RuleTableTest says how to renew it. -->
				# The rules that ship

				What each holds against a boat under the profile `standard`, and where that was read. `hullwright explain RULE` shows the
				page of one. Keys such as N2-A stand for public documents that the pages describe; check every limit against the standard
				that you have bought.

				| rule | what is wrong | severity and limit | source | kind of source |
				| --- | --- | --- | --- | --- |
				""" + rules.stream().map(RuleTableTest::row).collect(Collectors.joining());
		Files.createDirectories(Path.of("target"));
		Files.writeString(Path.of("target", "rules.md"), table);
		assertEquals(table, Files.readString(TABLE), TABLE + " is out of date: copy target/rules.md over it");
	}

	private static String row(RuleDescription rule) {
		String limits = rule.bands().isEmpty() ? rule.severity().word()
				: rule.bands().stream().map(band -> band.severity().word() + " above " + band.limit()).collect(Collectors.joining("; "));
		String parameters = rule.parameters().stream().map(each -> "; `" + each.name() + "` " + each.usual()).collect(Collectors.joining());
		String sources = Stream.concat(rule.bands().isEmpty() ? Stream.of(rule.source()) : rule.bands().stream().map(Band::source),
				rule.parameters().stream().map(Parameter::source)).distinct().collect(Collectors.joining("; "));
		String usually = rule.usuallyOn() ? "" : "off unless a profile asks for it; ";
		return "| `" + rule.id() + "` | " + rule.title() + " | " + usually + limits + parameters + " | " + sources.replace("|", "/") + " | " + kind(sources) + " |\n";
	}

	/** How sure a source is, by its own words: what was read in public, what the trade does, what nobody looked up. */
	private static String kind(String sources) {
		boolean published = PUBLISHED.matcher(sources).find();
		boolean practice = sources.contains("common practice");
		boolean memory = sources.contains("from memory");
		String kinds = Stream.of(published ? "published" : "", practice ? "common practice" : "", memory ? "memory" : "").filter(word -> !word.isEmpty())
				.collect(Collectors.joining(", "));
		return kinds.isEmpty() ? "text and catalogs" : kinds;
	}
}
