/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.analysis.Figures;
import hullwright.network.Boat;
import hullwright.quantity.Length;
import hullwright.rules.BoatRule;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;

/**
 * The example of a house's rule, built as somebody outside would who has the jars of the rule API and a JDK: by javac and jar.
 */
final class HouseRule {

	private static final Path SOURCES = Path.of("../hullwright.examples/house-rule/src/main");
	private static final String MANIFEST = """
			Bundle-SymbolicName: yard.rules;singleton:=true
			Bundle-Version: 1.0.0
			Require-Bundle: hullwright.rules;bundle-version="[0.1,0.2)"
			""";

	private HouseRule() {
	}

	/** Builds the jar in an empty folder. */
	static Path built(Path folder) throws IOException {
		Path classes = folder.resolve("classes");
		List<String> arguments = new ArrayList<>(List.of("-proc:none", "-Xlint:all", "-Werror", "--release", "17", "-d", classes.toString(), "-classpath", api()));
		try (Stream<Path> sources = Files.walk(SOURCES.resolve("java"))) {
			sources.filter(file -> file.toString().endsWith(".java")).forEach(file -> arguments.add(file.toString()));
		}
		ByteArrayOutputStream told = new ByteArrayOutputStream();
		assertEquals(0, ToolProvider.getSystemJavaCompiler().run(null, told, told, arguments.toArray(String[]::new)), told::toString);
		Path jar = folder.resolve("yard-rules.jar");
		Path manifest = Files.writeString(folder.resolve("manifest"), MANIFEST);
		PrintStream messages = new PrintStream(told, true, StandardCharsets.UTF_8);
		assertEquals(0, java.util.spi.ToolProvider.findFirst("jar").orElseThrow().run(messages, messages, "--create", "--file", jar.toString(),
				"--manifest", manifest.toString(), "-C", classes.toString(), ".", "-C", SOURCES.resolve("resources").toString(), "."), told::toString);
		return jar;
	}

	/** The bundles that are open to plugins, and nothing else of ours. */
	private static String api() {
		return Stream.of(BoatRule.class, Boat.class, Figures.class, Length.class)
				.map(each -> Path.of(URI.create(each.getProtectionDomain().getCodeSource().getLocation().toString())).toString())
				.collect(Collectors.joining(File.pathSeparator));
	}
}
