/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.guards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Guards the shape of the repository.
 */
class RepositoryTest {

	private static final Pattern UNTRACKED_TODO = Pattern.compile("\\b(TO" + "DO|FIX" + "ME)\\b(?!.*#\\d+)");

	@Test
	void topLevelHoldsWhatItMayHold() throws IOException {
		try (Stream<Path> entries = Files.list(Repository.root())) {
			Set<String> found = entries.map(entry -> entry.getFileName().toString())
					.filter(name -> !name.startsWith(".") && !name.equals("target"))
					.collect(Collectors.toCollection(TreeSet::new));
			assertEquals(new TreeSet<>(Set.of("README.md", "DEVELOPERS.md", "pom.xml", "bundles", "features", "releng", "LICENSE")), found);
		}
	}

	@Test
	void everySourceFileNamesItsLicence() {
		List<Path> sources = sources(".java", ".xtext", ".mwe2", ".hull").toList();
		assertTrue(sources.size() > 100, "too few sources found to mean anything: " + sources.size());
		assertEquals(List.of(), sources.stream()
				.filter(file -> !read(file).contains("SPDX-FileCopyrightText: Hullwright contributors"))
				.filter(file -> !read(file).contains("SPDX-License-Identifier: EPL-2.0"))
				.toList());
	}

	@Test
	void unfinishedWorkNamesItsIssue() {
		assertEquals(List.of(), sources(".java", ".xtext").filter(file -> UNTRACKED_TODO.matcher(read(file)).find()).toList());
	}

	@Test
	void filesStayShort() {
		assertEquals(List.of(), sources(".java").filter(file -> read(file).lines().count() > 400).toList());
	}

	private static Stream<Path> sources(String... endings) {
		try {
			return Files.walk(Repository.root().resolve("bundles"))
					.filter(Files::isRegularFile)
					.filter(file -> Stream.of(endings).anyMatch(file.toString()::endsWith))
					.filter(file -> Stream.of("target", "src-gen", "emf-gen", "bin").noneMatch(folder -> inFolder(file, folder)));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	private static boolean inFolder(Path file, String folder) {
		for (Path part : Repository.root().relativize(file)) {
			if (part.toString().equals(folder)) {
				return true;
			}
		}
		return false;
	}

	private static String read(Path file) {
		try {
			return Files.readString(file);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
