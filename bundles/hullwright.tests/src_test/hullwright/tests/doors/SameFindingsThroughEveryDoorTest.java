/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.doors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The command line and the language server, as real processes, find the same in all examples: that which is written down in
 * {@code findings-of-examples.txt} beside this test. The live editor is held to the same list where there is a window, by
 * {@code SameFindingsInTheEditorTest}.
 */
class SameFindingsThroughEveryDoorTest {

	private static final Path EXAMPLES = Path.of("..", "hullwright.examples", "examples");
	private static final int PATIENCE_SECONDS = 120;

	/** Severities of the protocol (LSP 3.17, DiagnosticSeverity). */
	private static final List<String> SEVERITIES = List.of("", "error", "warning", "advice", "hint");

	@TempDir
	Path folder;

	static Stream<String> examples() throws IOException {
		try (Stream<Path> folders = Files.list(EXAMPLES)) {
			return folders.filter(Files::isDirectory).map(each -> each.getFileName().toString()).sorted().toList().stream();
		}
	}

	@ParameterizedTest
	@MethodSource("examples")
	void theCommandLineAndTheLanguageServerSayTheSame(String example) throws Exception {
		Path project = copy(EXAMPLES.resolve(example), folder.toRealPath().resolve(example));
		TreeSet<String> printed = printed(project);
		assertEquals(String.join("\n", writtenDown(example)), String.join("\n", printed), "as the list beside this test has it");
		try (ScriptedEditor editor = new ScriptedEditor(start("serve"))) {
			editor.open(project);
			List<Path> texts = texts(project);
			for (Path text : texts) {
				editor.show(text);
			}
			TreeSet<String> published = new TreeSet<>();
			for (long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS); System.nanoTime() < end; Thread.sleep(50)) {
				published = published(project, editor.published());
				boolean all = texts.stream().map(ScriptedEditor::address).allMatch(editor.published()::containsKey);
				if (all && published.equals(printed)) {
					break;
				}
			}
			assertEquals(String.join("\n", printed), String.join("\n", published));
			assertEquals(0, editor.end(), "the exit status of the server");
		}
	}

	private static TreeSet<String> writtenDown(String example) throws IOException {
		try (InputStream list = SameFindingsThroughEveryDoorTest.class.getResourceAsStream("findings-of-examples.txt")) {
			TreeSet<String> findings = new TreeSet<>();
			new String(list.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> line.startsWith(example + "/"))
					.forEach(line -> findings.add(line.substring(example.length() + 1)));
			return findings;
		}
	}

	private static List<Path> texts(Path project) throws IOException {
		try (Stream<Path> files = Files.walk(project)) {
			return files.filter(file -> file.toString().endsWith(".hull")).sorted().toList();
		}
	}

	private static Path copy(Path from, Path to) throws IOException {
		try (Stream<Path> files = Files.walk(from)) {
			for (Path file : files.toList()) {
				Path copy = to.resolve(from.relativize(file).toString());
				if (Files.isDirectory(file)) {
					Files.createDirectories(copy);
				} else {
					Files.copy(file, copy);
				}
			}
		}
		return to;
	}

	private Process start(String... arguments) throws IOException {
		String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
		List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-cp", classes,
				"hullwright.cli.Main"));
		command.addAll(List.of(arguments));
		ProcessBuilder builder = new ProcessBuilder(command).redirectError(folder.resolve("errors.txt").toFile());
		builder.environment().put("HULLWRIGHT_CONFIGURATION", folder.resolve("nobody").toString());
		return builder.start();
	}

	private TreeSet<String> printed(Path project) throws IOException, InterruptedException {
		Process check = start("check", "--format", "json", project.toString());
		String json = new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		assertTrue(check.waitFor() <= 2 && json.startsWith("{"), () -> "the command line printed " + json);
		TreeSet<String> findings = new TreeSet<>();
		for (JsonElement each : JsonParser.parseString(json).getAsJsonObject().getAsJsonArray("projects")) {
			for (JsonElement element : each.getAsJsonObject().getAsJsonArray("findings")) {
				JsonObject finding = element.getAsJsonObject();
				JsonObject place = finding.getAsJsonObject("place");
				findings.add(place.get("file").getAsString() + ":" + place.get("line").getAsInt() + ":" + place.get("column").getAsInt() + " "
						+ finding.get("severity").getAsString() + " " + finding.get("rule").getAsString());
			}
		}
		return findings;
	}

	private static TreeSet<String> published(Path project, Map<String, JsonArray> published) {
		TreeSet<String> findings = new TreeSet<>();
		published.forEach((address, diagnostics) -> {
			String file = project.relativize(Path.of(URI.create(address))).toString().replace('\\', '/');
			for (JsonElement each : diagnostics) {
				JsonObject diagnostic = each.getAsJsonObject();
				if (!diagnostic.has("code")) {
					// no finding of a rule, but a note that something could not be checked
					continue;
				}
				JsonObject start = diagnostic.getAsJsonObject("range").getAsJsonObject("start");
				findings.add(file + ":" + (start.get("line").getAsInt() + 1) + ":" + (start.get("character").getAsInt() + 1) + " "
						+ SEVERITIES.get(diagnostic.get("severity").getAsInt()) + " " + diagnostic.get("code").getAsString());
			}
		});
		return findings;
	}
}
