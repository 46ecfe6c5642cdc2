/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is read of a jar before anybody trusts it.
 */
class PluginJarTest {

	@TempDir
	Path folder;

	private static HousePlugin read(byte[] jar) {
		return PluginJar.plugin(new PluginFile("rules/yard.jar", jar, Optional.empty()));
	}

	private static String refusal(byte[] jar) {
		return read(jar).refusal().orElse("it is a plugin");
	}

	@Test
	void aPluginSaysWhatItIs() throws IOException {
		HousePlugin plugin = read(JarText.plugin().bytes());
		assertEquals(Optional.empty(), plugin.refusal());
		assertEquals("fabelholm.rules 1.2.0", plugin.title());
		assertEquals(List.of("fabelholm.SparePort"), plugin.rules());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			hullwright.rules;bundle-version="[0.1,0.2)"                                  | it is a plugin
			hullwright.rules;bundle-version="0.1.0",hullwright.analysis                  | it is a plugin
			hullwright.rules;bundle-version="[0.2,0.3)"                                  | it needs hullwright.rules [0.2,0.3), and this is 0.1.0
			hullwright.rules;bundle-version="0.1.1"                                      | it needs hullwright.rules 0.1.1, and this is 0.1.0
			hullwright.rules;bundle-version="new"                                        | it has a manifest that cannot be read: invalid range "new": invalid version "new": non-numeric "new"
			hullwright.rules;bundle-version="[0.1,0.2)",org.eclipse.ui                   | it needs org.eclipse.ui; a plugin has hullwright.rules, hullwright.analysis, hullwright.network, hullwright.quantity and Java
			hullwright.rules                                                             | it does not say for which versions of the rules it was written; its manifest needs Require-Bundle: hullwright.rules;bundle-version="[0.1,0.2)"
			""")
	void theVersionsThatItWasWrittenForMustFit(String needs, String told) throws IOException {
		assertEquals(told, refusal(JarText.plugin().header("Require-Bundle", needs).bytes()));
	}

	@Test
	void nativeCodeIsRefused() throws IOException {
		assertEquals("it holds native code, lib/fast.so, and rules are Java only", refusal(JarText.plugin().entry("lib/fast.so", "").bytes()));
		assertEquals("it holds native code, fast.DLL, and rules are Java only", refusal(JarText.plugin().entry("fast.DLL", "").bytes()));
		assertEquals("it asks for native code with Bundle-NativeCode, and rules are Java only",
				refusal(JarText.plugin().header("Bundle-NativeCode", "fast;osname=Linux").bytes()));
	}

	@Test
	void jarsWithinAreRefused() throws IOException {
		assertEquals("it holds another jar, lib/more.jar; what a plugin needs is unpacked into it", refusal(JarText.plugin().entry("lib/more.jar", "").bytes()));
		assertEquals("it has a Bundle-ClassPath; what a plugin needs is unpacked into its jar",
				refusal(JarText.plugin().header("Bundle-ClassPath", ".,lib").bytes()));
	}

	@Test
	void classesInOurPackagesAreRefused() throws IOException {
		assertEquals("it holds the class hullwright/rules/BoatRule.class, and the packages hullwright are not for plugins",
				refusal(JarText.plugin().entry("hullwright/rules/BoatRule.class", "").bytes()));
	}

	@Test
	void whatIsNoPluginSaysWhy() throws IOException {
		assertEquals("it is no jar", refusal(new byte[0]));
		assertEquals("it is no jar", refusal("a text".getBytes(StandardCharsets.UTF_8)));
		assertEquals("it is no plugin: its manifest has no Bundle-SymbolicName", refusal(JarText.plugin().header("Bundle-SymbolicName", null).bytes()));
		assertEquals("it is no plugin: it has no plugin.xml", refusal(JarText.plugin().entry("plugin.xml", null).bytes()));
		assertEquals("it has no rule: its plugin.xml contributes none at hullwright.rules.rule", refusal(JarText.plugin().entry("plugin.xml", "<plugin/>").bytes()));
		assertEquals("it has no rule: its plugin.xml contributes none at hullwright.rules.rule",
				refusal(JarText.plugin().entry("plugin.xml", "<plugin><extension point='other.point'><rule class='a.B'/></extension></plugin>").bytes()));
	}

	@Test
	void aDescriptorIsToldWithItsLine() throws IOException {
		assertTrue(refusal(JarText.plugin().entry("plugin.xml", "<plugin>\n<extension>\n</plugin>").bytes())
				.startsWith("it has a plugin.xml that cannot be read: line 3: "));
		assertEquals("it does not hold the class fabelholm.Missing that it contributes as a rule, plugin.xml line 2",
				refusal(JarText.plugin().entry("plugin.xml", "<plugin><extension point='hullwright.rules.rule'>\n<rule class='fabelholm.Missing'/></extension></plugin>").bytes()));
		assertEquals("it contributes a rule without a class, plugin.xml line 1",
				refusal(JarText.plugin().entry("plugin.xml", "<plugin><extension point='hullwright.rules.rule'><rule/></extension></plugin>").bytes()));
	}

	@Test
	void aDescriptorOpensNoFile() throws IOException {
		Path secret = Files.writeString(folder.resolve("secret"), "<rule class='secret.Rule'/>");
		assertTrue(read(JarText.plugin().entry("plugin.xml", "<!DOCTYPE plugin [<!ENTITY other SYSTEM '" + secret.toUri() + "'>]>\n"
				+ "<plugin><extension point='hullwright.rules.rule'>&other;</extension></plugin>").bytes()).refusal().isPresent());
	}

	/** Wherever a jar is cut off or spoilt, it is refused or it is still what it was; nothing is thrown. */
	@Test
	void aDamagedJarIsRefused() throws IOException {
		byte[] sound = JarText.plugin().bytes();
		for (int length = 0; length < sound.length - 22; length += 7) {
			assertTrue(read(Arrays.copyOf(sound, length)).refusal().isPresent(), "cut off at " + length);
		}
		Random random = new Random(17);
		for (int trial = 0; trial < 500; trial++) {
			byte[] spoilt = sound.clone();
			spoilt[random.nextInt(spoilt.length)] ^= (byte) (1 << random.nextInt(8));
			read(spoilt);
		}
	}

	@Test
	void aFileThatIsNoFileSaysSo() throws IOException {
		Files.createDirectories(folder.resolve("yard/rules/folder.jar"));
		Path outside = Files.write(folder.resolve("outside.jar"), JarText.plugin().bytes());
		Files.createSymbolicLink(folder.resolve("yard/rules/link.jar"), outside);
		Files.write(folder.resolve("yard/rules/zound.JAR"), JarText.plugin().bytes());
		Files.writeString(folder.resolve("yard/rules/notes.txt"), "no jar, and none of our business");
		List<PluginFile> found = PluginFile.ofProject(folder.resolve("yard"));
		assertEquals(List.of("rules/folder.jar", "rules/link.jar", "rules/zound.JAR"), found.stream().map(PluginFile::file).toList());
		assertEquals(List.of(Optional.of("it is no file"), Optional.of("it is a link to a place outside the project"), Optional.empty()),
				found.stream().map(PluginFile::problem).toList());
		assertArrayEquals(JarText.plugin().bytes(), found.get(2).bytes());
		assertEquals(List.of(), PluginFile.ofProject(folder));
	}
}
