/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.check.plugin.TrustedPlugins;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A rule of a house, built outside and dropped into a project as a jar.
 */
class HousePluginTest {

	private static final String BOAT = """
			import "standard:parts"
			series Skerry "Invented" { supply house { 12 V; fuse 3 A }
			  network bus {
			    backbone of light { terminator left : endFemale tap inlet : plainTap from house earths shield tee bow : block4 terminator right : endMale }
			    drop bow.1 via 2 m of light to radar : instrumentDisplay
			  }
			}
			""";

	private static final String FOUND = "radar hangs on Skerry.bus";

	@TempDir
	Path folder;

	private Path project;

	@BeforeEach
	void prepare() throws IOException {
		System.setProperty(TrustedPlugins.PROPERTY, folder.resolve("configuration").toString());
		project = Files.createDirectories(folder.resolve("yard"));
		Files.createDirectory(project.resolve("rules"));
		Files.writeString(project.resolve("boat.hull"), BOAT);
		Files.writeString(project.resolve("yard.hull"), "profile Yard from standard {\n}\n");
	}

	@AfterEach
	void forget() {
		System.clearProperty(TrustedPlugins.PROPERTY);
	}

	private Path jar(String file, String name, String version, Map<String, byte[]> entries) throws IOException {
		return Files.write(project.resolve("rules").resolve(file), HouseJar.of(name, version, entries));
	}

	private Path plugin(String file, String name, String version, String id, String extra) throws IOException {
		return Files.write(project.resolve("rules").resolve(file), HouseJar.plugin(name, version, id, extra));
	}

	private Run check() {
		return Run.of("check", project.toString());
	}

	/** What a run printed, whatever the width of the page. */
	private static String told(Run run) {
		return run.out().replaceAll("\\s+", " ");
	}

	@Test
	void aPluginIsOffUntilItIsTrustedAndAgainWhenItIsNot() throws IOException {
		Path jar = plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "");
		Run before = check();
		assertEquals(2, before.status(), before.out());
		assertTrue(told(before).contains("/yard/rules/yard-rules.jar plugin yard.rules 1.2.0 is off: nobody here trusts it yet"), before.out());
		assertFalse(before.out().contains(FOUND));
		Run listed = Run.of("plugins", project.toString());
		assertEquals(1, listed.status());
		assertTrue(listed.out().contains("yard.rules 1.2.0") && listed.out().contains("not trusted"), listed.out());

		assertEquals(0, Run.of("plugins", "--trust", jar.toString()).status());
		Run trusted = check();
		assertEquals(1, trusted.status(), trusted.out());
		assertTrue(trusted.out().contains(FOUND), trusted.out());
		assertTrue(trusted.out().contains("rule yard/no-radar"), trusted.out());
		assertEquals(0, Run.of("plugins", project.toString()).status());

		assertEquals(0, Run.of("plugins", "--distrust", jar.toString()).status());
		assertEquals(2, check().status());
	}

	@Test
	void trustEndsByChecksumTooOnceTheJarIsGone() throws IOException {
		Path jar = plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "");
		Run trusted = Run.of("plugins", "--trust", jar.toString());
		String checksum = trusted.out().replaceFirst("(?s).*SHA-256 ", "").strip();
		Path away = Files.move(jar, folder.resolve("away.jar"));
		assertEquals(0, Run.of("plugins", "--distrust", checksum).status());
		Files.move(away, jar);
		assertEquals(2, check().status());
		Run gone = Run.of("plugins", "--distrust", folder.resolve("gone.jar").toString());
		assertEquals(2, gone.status());
		assertTrue(gone.err().contains("there is no such file"), gone.err());
	}

	@Test
	void thePluginIsListedWithItsRules() throws IOException {
		Path jar = plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "");
		assertTrue(told(Run.of("plugins", project.toString())).contains("rule yard.NoRadarOnThisNetwork"), "before anything of it runs, the class is known");
		Run.of("plugins", "--trust", jar.toString());
		Run listed = Run.of("plugins", project.toString());
		assertTrue(told(listed).contains("rule yard/no-radar"), listed.out());
		assertTrue(listed.out().matches("(?s).*SHA-256 [0-9a-f]{64}\n.*"), listed.out());
	}

	@Test
	void programsReadTheListToo() throws IOException {
		plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "");
		Run listed = Run.of("plugins", "--format", "json", project.toString());
		assertEquals(1, listed.status(), listed.err());
		assertTrue(listed.out().contains("\"format\": \"hullwright-plugins\"") && listed.out().contains("\"state\": \"not-trusted\""), listed.out());
		assertEquals("", Run.of("plugins", "--format", "sarif", project.toString()).out());
	}

	/** That a plugin is off is one problem; that its rules are unknown meanwhile is no second one. */
	@Test
	void whatTheProfileSaysOfAPluginThatIsOffIsNoMistake() throws IOException {
		Path jar = plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "");
		Files.writeString(project.resolve("yard.hull"), "profile Yard from standard {\n  yard/no-radar error\n  cabling/no-such-rule off\n}\n");
		Files.writeString(project.resolve("boat.hull"), BOAT.replace("  network bus", "  waive yard/no-radar on bus.radar because \"owner insists\"\n  network bus"));
		Run off = check();
		assertFalse(off.out().contains("there is no rule 'yard/no-radar'"), off.out());
		assertTrue(off.out().contains("there is no rule 'cabling/no-such-rule'"), off.out());
		Run.of("plugins", "--trust", jar.toString());
		Files.writeString(project.resolve("yard.hull"), "profile Yard from standard {\n  yard/no-such-rule error\n}\n");
		assertTrue(check().out().contains("there is no rule 'yard/no-such-rule'"));
	}

	@Test
	void theReportNamesTheJarThatItsRulesCameFrom() throws IOException {
		Path jar = plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "");
		Run.of("plugins", "--trust", jar.toString());
		Run report = Run.of("check", "--format", "json", project.toString());
		assertTrue(report.out().replaceAll("\\s+", "").contains("{\"file\":\"rules/yard-rules.jar\",\"role\":\"plugin\",\"sha256\":\""), report.out());
	}

	@Test
	void aJarThatChangesMustBeTrustedAnew() throws IOException {
		Run.of("plugins", "--trust", plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "").toString());
		assertEquals(1, check().status());
		plugin("yard-rules.jar", "yard.rules", "1.2.1", "yard/no-radar", "System.out.println(1);");
		assertEquals(2, check().status());
	}

	@Test
	void profilesAndWaiversReachRulesOfTheHouse() throws IOException {
		Run.of("plugins", "--trust", plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "").toString());
		Files.writeString(project.resolve("yard.hull"), "profile Yard from standard {\n  yard/no-radar off\n}\n");
		assertEquals(0, check().status(), check().out());
		Files.writeString(project.resolve("yard.hull"), "profile Yard from standard {\n}\n");
		Files.writeString(project.resolve("boat.hull"), BOAT.replace("  network bus", "  waive yard/no-radar on bus.radar because \"owner insists\"\n  network bus"));
		Run waived = check();
		assertEquals(0, waived.status(), waived.out());
		assertTrue(waived.out().contains("Not counted: 1 waived."), waived.out());
	}

	@Test
	void aPluginThatClaimsTheRuleOfAnotherIsToldAndTheOthersRun() throws IOException {
		Run.of("plugins", "--trust", plugin("yard-rules.jar", "yard.rules", "1.2.0", "cabling/drop-too-long", "").toString());
		Run run = check();
		assertEquals(2, run.status());
		assertTrue(told(run).contains("plugin yard.rules 1.2.0 is off: it claims the rule cabling/drop-too-long, which hullwright.rules.cabling has already"), run.out());
		assertFalse(run.out().contains(FOUND));
	}

	@Test
	void aPluginThatThrowsIsNamedAndTheOthersRun() throws IOException {
		Run.of("plugins", "--trust", plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "if (true) throw new IllegalStateException(\"out of paint\");").toString());
		Run run = check();
		assertEquals(2, run.status());
		assertTrue(run.out().contains("out of paint"), run.out());
	}

	@Test
	void aPluginSeesNothingOfTheEngine() throws IOException {
		Run.of("plugins", "--trust", plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar",
				"try { Class.forName(\"hullwright.check.Checker\"); throw new IllegalStateException(\"seen\"); } catch (ClassNotFoundException expected) { }").toString());
		Run run = check();
		assertEquals(1, run.status(), run.out());
		assertFalse(run.out().contains("seen"), run.out());
	}

	@Test
	void whatIsNoPluginIsRefusedWithTheReason() throws IOException {
		Files.writeString(project.resolve("rules/notes.jar"), "not a jar");
		jar("nameless.jar", "", "", Map.of("a.txt", new byte[] { 1 }));
		jar("empty.jar", "yard.empty", "1.0.0", Map.of("plugin.xml", "<plugin/>".getBytes(StandardCharsets.UTF_8)));
		jar("broken.jar", "yard.broken", "1.0.0", Map.of("plugin.xml", "<plugin>".getBytes(StandardCharsets.UTF_8)));
		plugin("one.jar", "yard.twice", "1.0.0", "yard/no-radar", "");
		plugin("two.jar", "yard.twice", "2.0.0", "yard/no-radar", "");
		Run run = check();
		assertEquals(2, run.status());
		assertTrue(told(run).contains("plugin notes.jar is off: it is no jar"), run.out());
		assertTrue(told(run).contains("plugin nameless.jar is off: it is no plugin: its manifest has no Bundle-SymbolicName"), run.out());
		assertTrue(told(run).contains("plugin yard.empty 1.0.0 is off: it has no rule: its plugin.xml contributes none at hullwright.rules.rule"), run.out());
		assertTrue(told(run).contains("plugin yard.broken 1.0.0 is off: it has a plugin.xml that cannot be read: line 1: "), run.out());
		assertTrue(told(run).contains("plugin yard.twice 1.0.0 is off: there are two of it: rules/one.jar (yard.twice 1.0.0), rules/two.jar (yard.twice 2.0.0)"), run.out());
		assertTrue(told(run).contains("Not checked: plugin rules/notes.jar did not run"), run.out());
		Run trusting = Run.of("plugins", "--trust", project.resolve("rules/notes.jar").toString());
		assertEquals(2, trusting.status());
		assertTrue(trusting.err().contains("was not trusted: it is no jar"), trusting.err());
	}

	@Test
	void aPluginOfTheUserServesEveryProject() throws IOException {
		Path jar = plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "");
		Path mine = Files.createDirectories(folder.resolve("configuration/rules")).resolve("yard-rules.jar");
		Files.move(jar, mine);
		assertEquals(2, check().status());
		Run.of("plugins", "--trust", mine.toString());
		assertTrue(check().out().contains(FOUND));
	}
}
