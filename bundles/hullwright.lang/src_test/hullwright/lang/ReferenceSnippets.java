/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.URI;

/**
 * The snippets of the language reference. A fence opens with {@code hull}; then may follow where the snippet stands
 * ({@code catalog}, {@code series}, {@code network}; otherwise it is a whole file) and {@code wrong}, if it has the problems
 * that are marked in it and written in the next fence.
 */
final class ReferenceSnippets {

	/** Where chapters, their catalog and the generated page lie. */
	static final Path FOLDER = Path.of("reference");

	/** A place beside the chapters, so that a snippet can import their catalog. */
	static final URI PLACE = URI.createFileURI(FOLDER.resolve("snippet.hull").toAbsolutePath().normalize().toString());

	private static final String CATALOG = "import \"kit.hull\"\n\ncatalog Snippet {\n%s}\n";

	/** What a snippet of a series may refer to, as the reference shows it. */
	static final String SERIES = """
			import "kit.hull"

			series Fabelholm31 {
				options { flybridge; sounder }
				places { forepeak wet; helm; engineRoom hot }
				bulkhead engineWall between helm and engineRoom
				route keel from forepeak to engineRoom 9 m through engineWall
				supply house { 12 V }
				supply other { 12 V }
			%s}
			""";

	private static final String NETWORK = SERIES.formatted("network instruments of kind instrument bus {\n%s}\n");

	/** One snippet: whether it is a whole file, the file that it stands in, marks included, and the messages of the marks. */
	record Snippet(Path chapter, int line, boolean whole, String file, List<String> messages) {

		@Override
		public String toString() {
			return chapter.getFileName() + ":" + line;
		}
	}

	private ReferenceSnippets() {
	}

	/** The chapters in reading order. */
	static List<Path> chapters() {
		try (Stream<Path> files = Files.list(FOLDER)) {
			return files.filter(file -> file.getFileName().toString().matches("\\d\\d-.*\\.md")).sorted().toList();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** All snippets in reading order. */
	static List<Snippet> all() {
		return chapters().stream().flatMap(chapter -> in(chapter).stream()).toList();
	}

	private static List<Snippet> in(Path chapter) {
		List<Snippet> snippets = new ArrayList<>();
		List<String> lines = lines(chapter);
		for (int at = 0; at < lines.size(); at++) {
			if (lines.get(at).startsWith("```hull")) {
				List<String> attributes = List.of(lines.get(at).substring(3).split(" "));
				int end = endOfFence(lines, at);
				String text = String.join("\n", lines.subList(at + 1, end)) + "\n";
				List<String> messages = List.of();
				if (attributes.contains("wrong")) {
					int told = end + 1 + lines.subList(end + 1, lines.size()).indexOf("```text");
					messages = lines.subList(told + 1, endOfFence(lines, told));
				}
				snippets.add(new Snippet(chapter, at + 1, !lines.get(at).matches("```hull (catalog|series|network).*"), inItsFile(text, attributes), messages));
				at = end;
			}
		}
		return snippets;
	}

	private static List<String> lines(Path chapter) {
		try {
			return Files.readAllLines(chapter);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	private static int endOfFence(List<String> lines, int start) {
		return start + 1 + lines.subList(start + 1, lines.size()).indexOf("```");
	}

	private static String inItsFile(String text, List<String> attributes) {
		if (attributes.contains("catalog")) {
			return CATALOG.formatted(text);
		} else if (attributes.contains("series")) {
			return SERIES.formatted(text);
		}
		return attributes.contains("network") ? NETWORK.formatted(text) : text;
	}
}
