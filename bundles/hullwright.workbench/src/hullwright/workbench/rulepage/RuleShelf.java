/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.rulepage;

import hullwright.check.LoadedRule;
import hullwright.check.Snapshot;
import hullwright.rules.Band;
import hullwright.rules.Parameter;
import hullwright.rules.RuleInForce;
import hullwright.workbench.live.ProjectText;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * The rules for a project, with what its profile makes of them.
 *
 * @param text the project; empty where none is open, so that the rules are as they ship
 * @param rules the rules, by id
 * @param inForce each rule as it is in force, by id
 */
record RuleShelf(Optional<ProjectText> text, List<LoadedRule> rules, Map<String, RuleInForce> inForce) {

	/** Reads a project in the background. */
	static CompletableFuture<RuleShelf> read(Optional<ProjectText> text) {
		return CompletableFuture.supplyAsync(() -> {
			try {
				Snapshot snapshot = text.isPresent() ? text.get().read() : Snapshot.of(Map.of());
				Map<String, RuleInForce> inForce = new HashMap<>();
				ProjectText.engine().inForce(snapshot).rules().forEach(each -> inForce.put(each.description().id(), each));
				return new RuleShelf(text, ProjectText.engine().rules(snapshot).rules(), inForce);
			} catch (IOException e) {
				throw new CompletionException(e);
			}
		});
	}

	Optional<LoadedRule> rule(String id) {
		return rules.stream().filter(each -> each.description().id().equals(id)).findFirst();
	}

	/** Whether a rule runs for the project. */
	boolean on(LoadedRule rule) {
		RuleInForce here = inForce.get(rule.description().id());
		return here == null ? rule.description().usuallyOn() : here.on();
	}

	/** The page of a rule as Markdown, with what is in force after its title. */
	String page(LoadedRule rule) {
		String page = rule.page().orElse("# " + rule.description().title() + "\n\nThe rule " + rule.description().id() + " came without a page.\n");
		int title = page.startsWith("# ") ? page.indexOf('\n') + 1 : 0;
		return page.substring(0, title) + "\n" + inForce(rule) + "\n" + page.substring(title);
	}

	private String inForce(LoadedRule rule) {
		RuleInForce here = inForce.getOrDefault(rule.description().id(), RuleInForce.asShipped(rule.description()));
		StringBuilder words = new StringBuilder("`" + rule.description().id() + "`\n\n");
		words.append("## In force").append(text.map(project -> " in " + escaped(project.folder().getFileName().toString())).orElse("")).append("\n\n");
		if (!here.on()) {
			words.append("- **off**: ").append(escaped(rule.description().usuallyOn() ? here.source() : "it runs only where a profile switches it on")).append('\n');
		} else if (here.bands().isEmpty()) {
			words.append("- **").append(here.severity().word()).append("**: ").append(escaped(here.source())).append('\n');
		}
		for (Band band : here.on() ? here.bands() : List.<Band>of()) {
			words.append("- **").append(band.severity().word()).append(" above ").append(band.limit()).append("**: ").append(escaped(band.source())).append('\n');
		}
		for (Parameter parameter : rule.description().parameters()) {
			RuleInForce.ParameterInForce value = here.parameters().get(parameter.name());
			words.append("- ").append(escaped(parameter.name())).append(" **").append(value == null ? parameter.usual() : value.value()).append("**, ")
					.append(escaped(parameter.meaning())).append(": ").append(escaped(value == null ? parameter.source() : value.source())).append('\n');
		}
		return words.toString();
	}

	/** So that a name or a source is no mark-up. */
	private static String escaped(String words) {
		return words.replaceAll("([\\\\`*_\\[\\]<>#|])", "\\\\$1");
	}
}
