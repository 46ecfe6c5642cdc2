/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.plugin.HousePlugin;
import hullwright.check.plugin.PluginFile;
import hullwright.check.plugin.TrustedPlugins;
import hullwright.rules.report.CheckReport;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Plugins that come, go and change while one engine goes on, as they do in the window.
 */
class PluginsOfSessionTest {

	private static final String BOAT = """
			import "standard:parts"
			series Skerry "Invented" { supply house { 12 V; fuse 3 A }
			  network bus {
			    backbone of light { terminator left : endFemale tap inlet : plainTap from house earths shield tee bow : block4 terminator right : endMale }
			    drop bow.1 via 2 m of light to radar : instrumentDisplay
			  }
			}
			""";
	private static final LocalDate DAY = LocalDate.of(2030, 1, 1);

	@TempDir
	Path folder;

	private TrustedPlugins trust() {
		return new TrustedPlugins(folder);
	}

	private PluginFile trusted(byte[] jar) throws IOException {
		PluginFile file = new PluginFile("rules/yard.jar", jar, Optional.empty());
		trust().trust(HousePlugin.of(file), DAY);
		return file;
	}

	private static CheckRequest with(PluginFile... jars) {
		return CheckRequest.ofAll(Snapshot.of(Map.of("boat.hull", BOAT)).with(List.of(jars)), DAY);
	}

	private static List<String> rules(CheckReport report) {
		return report.findings().stream().map(each -> each.finding().rule()).toList();
	}

	@Test
	void trustCountsFromTheNextCheckOn() throws IOException {
		Checker checker = Checker.create(trust());
		PluginFile jar = new PluginFile("rules/yard.jar", HouseJar.plugin("yard.rules", "1.0.0", "yard/no-radar", ""), Optional.empty());
		assertEquals(List.of("project/plugin-off"), rules(checker.check(with(jar))));
		trusted(jar.bytes());
		assertEquals(List.of("yard/no-radar"), rules(checker.check(with(jar))));
		trust().distrust(jar.sha256());
		assertEquals(List.of("project/plugin-off"), rules(checker.check(with(jar))));
		assertEquals(List.of(), rules(checker.check(with())));
	}

	@Test
	void anEngineWithoutAUserTrustsNobody() throws IOException {
		PluginFile jar = trusted(HouseJar.plugin("yard.rules", "1.0.0", "yard/no-radar", ""));
		assertEquals(List.of("project/plugin-off"), rules(Checker.create().check(with(jar))));
	}

	@Test
	void aRuleThatFailedRunsAgainOnceItsPluginIsMended() throws IOException {
		Checker checker = Checker.create(trust());
		PluginFile broken = trusted(HouseJar.plugin("yard.rules", "1.0.0", "yard/no-radar", "if (true) throw new IllegalStateException(\"out of paint\");"));
		assertEquals(List.of("project/rule-failed"), rules(checker.check(with(broken))));
		PluginFile mended = trusted(HouseJar.plugin("yard.rules", "1.0.1", "yard/no-radar", ""));
		CheckReport report = checker.check(with(mended));
		assertEquals(List.of("yard/no-radar"), rules(report));
		assertTrue(report.complete(), () -> report.gaps().toString());
		assertEquals(List.of("project/rule-failed"), rules(checker.check(with(broken))), "the broken one stays off for the session");
	}

	@Test
	void whatAPluginKeepsIsNotLoadedAnewForEachProject() throws IOException {
		Checker checker = Checker.create(trust());
		PluginFile one = trusted(HouseJar.plugin("yard.one", "1.0.0", "yard/no-radar", ""));
		PluginFile other = trusted(HouseJar.plugin("yard.other", "1.0.0", "yard/no-antenna", ""));
		Object first = checker.rules(with(one).snapshot()).rule("yard/no-radar").orElseThrow().rule();
		assertFalse(checker.rules(with(other).snapshot()).rule("yard/no-radar").isPresent());
		assertEquals(first, checker.rules(with(one).snapshot()).rule("yard/no-radar").orElseThrow().rule());
	}

	@Test
	void oneOfTwoThatClaimTheSameRuleIsToldAndTheOtherRuns() throws IOException {
		Checker checker = Checker.create(trust());
		PluginFile one = trusted(HouseJar.plugin("yard.one", "1.0.0", "yard/no-radar", ""));
		PluginFile other = trusted(HouseJar.plugin("yard.other", "1.0.0", "yard/no-radar", ""));
		CheckReport report = checker.check(with(one, other));
		assertEquals(List.of("yard/no-radar", "project/plugin-refused"), rules(report));
		assertTrue(report.findings().get(1).finding().message().contains("plugin yard.other 1.0.0 is off: it claims the rule yard/no-radar, which yard.one 1.0.0 has already"),
				() -> report.findings().get(1).finding().message());
	}

	@Test
	void aSecondCopyOfAJarCountsForNothing() throws IOException {
		PluginFile jar = trusted(HouseJar.plugin("yard.rules", "1.0.0", "yard/no-radar", ""));
		PluginFile copy = new PluginFile("rules/copy.jar", jar.bytes(), Optional.empty());
		assertEquals(List.of("yard/no-radar"), rules(Checker.create(trust()).check(with(jar, copy))));
	}

	@Test
	void aClassThatIsNoneIsToldAndTheRulesThatShipRun() throws IOException {
		PluginFile jar = trusted(HouseJar.of("yard.rules", "1.0.0", Map.of("yard/Rule.class", new byte[] { 1, 2, 3 },
				"plugin.xml", "<plugin><extension point='hullwright.rules.rule'><rule class='yard.Rule'/></extension></plugin>".getBytes())));
		CheckReport report = Checker.create(trust()).check(with(jar));
		assertEquals(List.of("project/plugin-refused"), rules(report));
		assertTrue(report.findings().get(0).finding().message().contains("yard.Rule cannot be used: ClassFormatError"), () -> report.findings().get(0).finding().message());
		assertFalse(report.rules().isEmpty());
	}
}
