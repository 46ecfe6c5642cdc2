/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.check.Checker;
import hullwright.check.plugin.HousePlugin;
import hullwright.check.plugin.PluginFile;
import hullwright.check.plugin.TrustedPlugins;
import hullwright.testkit.MutationGuard;
import hullwright.testkit.RulePageTests;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The example of a house's rule meets what the rules that ship must meet.
 */
class HouseRuleTest {

	private static final String TITLE = "yard.rules 1.0.0";

	@TempDir
	static Path folder;

	private static Checker checker;

	/** As a plugin of a user, so that the texts of the page are checked with it. */
	@BeforeAll
	static void build() throws IOException {
		TrustedPlugins trust = new TrustedPlugins(folder.resolve("configuration"));
		Files.createDirectories(trust.rulesOfUser());
		Path jar = Files.move(HouseRule.built(Files.createDirectory(folder.resolve("empty"))), trust.rulesOfUser().resolve("yard-rules.jar"));
		trust.trust(HousePlugin.of(PluginFile.at(jar)), LocalDate.of(2030, 1, 1));
		checker = Checker.create(trust);
	}

	@Test
	void itIsAPlugin() {
		HousePlugin plugin = HousePlugin.of(PluginFile.at(folder.resolve("configuration/rules/yard-rules.jar")));
		assertEquals(Optional.empty(), plugin.refusal());
		assertEquals(TITLE, plugin.title());
	}

	@TestFactory
	Stream<DynamicNode> pages() {
		return new RulePageTests(checker).ofBundle(TITLE);
	}

	@TestFactory
	Stream<DynamicNode> pagesNoticeARuleThatIsWrong() {
		return new MutationGuard(checker).ofBundle(TITLE);
	}
}
