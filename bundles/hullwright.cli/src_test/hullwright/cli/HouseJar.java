/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * Makes jars as an invented yard would: a rule compiled against the API alone, with its page and its plugin.xml.
 */
final class HouseJar {

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

	private HouseJar() {
	}

	/** A plugin with one rule. */
	static byte[] plugin(String name, String version, String id, String extra) throws IOException {
		Map<String, byte[]> entries = new LinkedHashMap<>();
		entries.put("plugin.xml", "<plugin><extension point=\"hullwright.rules.rule\"><rule class=\"yard.NoRadarOnThisNetwork\"/></extension></plugin>"
				.getBytes(StandardCharsets.UTF_8));
		entries.put("yard/NoRadarOnThisNetwork.class", compiled(RULE.formatted(id, extra)));
		entries.put("yard/NoRadarOnThisNetwork.md", "# No radar here\n\nThe yard once had trouble.\n".getBytes(StandardCharsets.UTF_8));
		return of(name, version, entries);
	}

	/** A jar with a manifest and these entries; without a name it says nothing of itself. */
	static byte[] of(String name, String version, Map<String, byte[]> entries) throws IOException {
		String headers = name.isEmpty() ? ""
				: "Bundle-SymbolicName: " + name + ";singleton:=true\nBundle-Version: " + version + "\nRequire-Bundle: hullwright.rules;bundle-version=\"[0.1,0.2)\"\n";
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		Manifest manifest = new Manifest(new ByteArrayInputStream(("Manifest-Version: 1.0\n" + headers).getBytes(StandardCharsets.UTF_8)));
		try (JarOutputStream jar = new JarOutputStream(bytes, manifest)) {
			for (Map.Entry<String, byte[]> each : entries.entrySet()) {
				jar.putNextEntry(new JarEntry(each.getKey()));
				jar.write(each.getValue());
			}
		}
		return bytes.toByteArray();
	}

	/** The class file of the one class of a source text. */
	private static byte[] compiled(String source) {
		JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
		SimpleJavaFileObject text = new SimpleJavaFileObject(URI.create("string:///yard/NoRadarOnThisNetwork.java"), JavaFileObject.Kind.SOURCE) {
			@Override
			public CharSequence getCharContent(boolean ignoreEncodingErrors) {
				return source;
			}
		};
		ByteArrayOutputStream classFile = new ByteArrayOutputStream();
		JavaFileManager inMemory = new ForwardingJavaFileManager<JavaFileManager>(compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
			@Override
			public JavaFileObject getJavaFileForOutput(Location location, String name, JavaFileObject.Kind kind, FileObject sibling) {
				return new SimpleJavaFileObject(URI.create("mem:///" + name + ".class"), kind) {
					@Override
					public ByteArrayOutputStream openOutputStream() {
						return classFile;
					}
				};
			}
		};
		StringWriter problems = new StringWriter();
		boolean sound = compiler.getTask(problems, inMemory, null, List.of("-proc:none", "-cp", api()), null, List.of(text)).call();
		assertTrue(sound, problems.toString());
		return classFile.toByteArray();
	}

	/** Where the API's classes are: what a plugin is compiled against. */
	private static String api() {
		return Stream.of(hullwright.rules.BoatRule.class, hullwright.network.Boat.class, hullwright.analysis.Figures.class, hullwright.quantity.Length.class)
				.map(each -> Path.of(URI.create(each.getProtectionDomain().getCodeSource().getLocation().toString())).toString())
				.collect(Collectors.joining(java.io.File.pathSeparator));
	}
}
