/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.check.plugin.TrustedPlugins;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import javax.tools.JavaCompiler;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A rule of a house, built outside and dropped into a project as a jar.
 */
class HousePluginTest {

	private static final String RULE = """
			package yard;
			import hullwright.network.Network;
			import hullwright.rules.*;
			import java.util.*;
			public final class NoRadarOnThisNetwork implements BoatRule {
				public RuleDescription description() {
					return RuleDescription.of("%s", "No radar here", Severity.WARNING, "{device} hangs on {network}", "the house");
				}
				public List<Finding> check(BoatUnderCheck boat) {
					List<Finding> findings = new ArrayList<>();
					for (Network network : boat.boat().networks()) {
						network.drops().forEach(drop -> drop.device().filter(device -> device.name().endsWith("radar")).ifPresent(device ->
								findings.add(boat.finding(drop.origin()).value("device", "radar").value("network", network.name()).build())));
					}
					%s
					return findings;
				}
			}
			""";

	private static final String BOAT = """
			import "standard:parts"
			series Skerry "Invented" {
			  network bus {
			    backbone of light { terminator left : endFemale tee bow : block4 terminator right : endMale }
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
		Manifest manifest = new Manifest();
		manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
		if (!name.isEmpty()) {
			manifest.getMainAttributes().putValue("Bundle-SymbolicName", name + ";singleton:=true");
			manifest.getMainAttributes().putValue("Bundle-Version", version);
			manifest.getMainAttributes().putValue("Require-Bundle", "hullwright.rules;bundle-version=\"[0.1,0.2)\"");
		}
		Path jar = project.resolve("rules").resolve(file);
		try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest)) {
			for (Map.Entry<String, byte[]> each : entries.entrySet()) {
				out.putNextEntry(new JarEntry(each.getKey()));
				out.write(each.getValue());
			}
		}
		return jar;
	}

	private Path plugin(String file, String name, String version, String id, String extra) throws IOException {
		Map<String, byte[]> entries = new LinkedHashMap<>();
		entries.put("plugin.xml", "<plugin><extension point=\"hullwright.rules.rule\"><rule class=\"yard.NoRadarOnThisNetwork\"/></extension></plugin>"
				.getBytes(StandardCharsets.UTF_8));
		entries.put("yard/NoRadarOnThisNetwork.class", compiled(RULE.formatted(id, extra)));
		entries.put("yard/NoRadarOnThisNetwork.md", "# No radar here\n\nThe yard once had trouble.\n".getBytes(StandardCharsets.UTF_8));
		return jar(file, name, version, entries);
	}

	/** The class file of the one class of a source text. */
	private byte[] compiled(String source) throws IOException {
		JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
		Path classes = Files.createDirectories(folder.resolve("classes"));
		SimpleJavaFileObject text = new SimpleJavaFileObject(URI.create("string:///yard/NoRadarOnThisNetwork.java"), SimpleJavaFileObject.Kind.SOURCE) {
			@Override
			public CharSequence getCharContent(boolean ignoreEncodingErrors) {
				return source;
			}
		};
		OutputStream problems = new ByteArrayOutputStream();
		boolean sound = compiler.getTask(new java.io.OutputStreamWriter(problems, StandardCharsets.UTF_8), null, null,
				List.of("-proc:none", "-d", classes.toString(), "-cp", api()), null, List.of(text)).call();
		assertTrue(sound, problems.toString());
		return Files.readAllBytes(classes.resolve("yard/NoRadarOnThisNetwork.class"));
	}

	/** Where the API's classes are: what a plugin is compiled against. */
	private static String api() {
		List<String> places = new java.util.ArrayList<>();
		for (Class<?> each : List.of(hullwright.rules.BoatRule.class, hullwright.network.Boat.class, hullwright.analysis.Figures.class, hullwright.quantity.Length.class)) {
			places.add(Path.of(URI.create(each.getProtectionDomain().getCodeSource().getLocation().toString())).toString());
		}
		return String.join(java.io.File.pathSeparator, places);
	}

	private Run check() {
		return Run.of("check", project.toString());
	}

	@Test
	void aPluginIsOffUntilItIsTrustedAndAgainWhenItIsNot() throws IOException {
		Path jar = plugin("yard-rules.jar", "yard.rules", "1.2.0", "yard/no-radar", "");
		Run before = check();
		assertEquals(2, before.status(), before.out());
		assertTrue(before.out().contains("Not checked: plugin rules/yard-rules.jar (yard.rules 1.2.0) is off: nobody here trusts it yet"), before.out());
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
		assertTrue(run.out().contains("plugin rules/yard-rules.jar claims the rule cabling/drop-too-long, which hullwright.rules.cabling has already"), run.out());
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
		assertTrue(run.out().contains("plugin rules/notes.jar is off: it is no jar"), run.out());
		assertTrue(run.out().contains("plugin rules/nameless.jar is off: it is no plugin: its manifest has no Bundle-SymbolicName"), run.out());
		assertTrue(run.out().contains("plugin rules/empty.jar is off: it has no rule: its plugin.xml contributes none at hullwright.rules.rule"), run.out());
		assertTrue(run.out().contains("plugin rules/broken.jar is off: it has a plugin.xml that cannot be read: line 1: "), run.out());
		assertTrue(run.out().contains("plugin rules/one.jar is off: there are two of it: rules/one.jar (yard.twice 1.0.0), rules/two.jar (yard.twice 2.0.0)"), run.out());
		assertTrue(run.out().contains("No findings in what could be checked."), run.out());
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
