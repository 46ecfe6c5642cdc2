/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import hullwright.rules.Band;
import hullwright.rules.RuleDescription;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
import hullwright.rules.report.SetAside;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The rules of a run of SARIF: all that there are, whether or not they found something, and the kinds of problems of texts and
 * projects that it tells of, which no rule finds.
 */
final class SarifRules {

	private final CheckReport report;
	private final Map<String, Integer> numbers = new LinkedHashMap<>();

	SarifRules(CheckReport report) {
		this.report = report;
		report.rules().forEach(run -> numbers.put(run.rule(), numbers.size()));
		Stream.concat(report.findings().stream(), report.setAside().stream().map(SetAside::finding)).map(ReportedFinding::finding)
				.forEach(finding -> numbers.putIfAbsent(finding.rule(), numbers.size()));
	}

	/** The number of a rule in the list. */
	int number(String rule) {
		return numbers.get(rule);
	}

	/** All rules, in order of their numbers. */
	JsonArray descriptors() {
		Map<String, RuleRun> runs = report.rules().stream().collect(Collectors.toMap(RuleRun::rule, run -> run));
		JsonArray rules = new JsonArray();
		numbers.keySet().forEach(rule -> rules.add(runs.containsKey(rule) ? descriptor(runs.get(rule)) : named(rule)));
		return rules;
	}

	private static JsonObject descriptor(RuleRun run) {
		RuleDescription description = run.description();
		JsonObject rule = named(run.rule());
		rule.add("shortDescription", SarifText.description(description.title()));
		rule.add("fullDescription", SarifText.description(run.page().flatMap(SarifRules::introduction).orElse(description.title())));
		JsonObject help = SarifText.description(run.page().orElse(description.title()));
		run.page().ifPresent(page -> help.addProperty("markdown", page));
		rule.add("help", help);
		JsonObject configuration = new JsonObject();
		configuration.addProperty("enabled", true);
		configuration.addProperty("level", SarifText.level(description.severity()));
		rule.add("defaultConfiguration", configuration);
		JsonObject properties = new JsonObject();
		properties.addProperty("contributor", run.contributor());
		properties.addProperty("state", JsonText.word(run.state()));
		run.reason().ifPresent(reason -> properties.addProperty("reason", reason));
		JsonArray bands = new JsonArray();
		for (Band band : description.bands()) {
			JsonObject each = SarifText.property("severity", band.severity().word());
			JsonValue.add(each, "above", band.limit());
			each.addProperty("source", band.source());
			bands.add(each);
		}
		properties.add("bands", bands);
		rule.add("properties", properties);
		return rule;
	}

	private static JsonObject named(String rule) {
		JsonObject named = SarifText.property("id", rule);
		named.addProperty("name", Arrays.stream(rule.substring(rule.indexOf('/') + 1).split("-"))
				.map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1)).collect(Collectors.joining()));
		return named;
	}

	/** The paragraph of a page between its title and what follows. */
	private static Optional<String> introduction(String page) {
		return Arrays.stream(page.split("\\R\\s*\\R")).map(String::strip).filter(paragraph -> !paragraph.startsWith("#") && !paragraph.isEmpty())
				.findFirst().map(paragraph -> paragraph.replaceAll("\\s*\\R\\s*", " "));
	}

	/** What the profile switches off, against the configuration that each rule ships with. */
	JsonArray overrides() {
		JsonArray overrides = new JsonArray();
		report.rules().stream().filter(run -> run.state() == RuleRun.State.OFF).forEach(run -> {
			JsonObject off = new JsonObject();
			JsonObject configuration = new JsonObject();
			configuration.addProperty("enabled", false);
			off.add("configuration", configuration);
			off.add("descriptor", reference(run.rule()));
			overrides.add(off);
		});
		return overrides;
	}

	/** A reference to a rule of the list. */
	JsonObject reference(String rule) {
		JsonObject reference = SarifText.property("id", rule);
		reference.addProperty("index", number(rule));
		return reference;
	}
}
