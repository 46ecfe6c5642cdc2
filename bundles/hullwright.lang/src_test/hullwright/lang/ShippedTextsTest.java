/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.spec.Profile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What ships must be readable: it is the first thing that a new user opens. */
class ShippedTextsTest {

	static Stream<Path> shipped() {
		return HullTexts.shipped();
	}

	/** The list of messages invents nothing: PGNs and sentences are those of the standards. */
	static Stream<Path> inventions() {
		return HullTexts.shipped().filter(file -> !file.endsWith("standard/messages.hull"));
	}

	static Stream<Path> exampleProjects() throws IOException {
		try (Stream<Path> folders = Files.list(HullTexts.EXAMPLES)) {
			return folders.filter(Files::isDirectory).sorted().toList().stream();
		}
	}

	@Test
	void theCatalogAndAllExampleProjectsAreFound() throws IOException {
		assertTrue(shipped().anyMatch(file -> file.endsWith("standard/parts.hull")));
		assertEquals(List.of("day-boat", "faulty", "faulty-text", "first-power-up", "harbour-pilot", "motor-yacht", "twin-cruiser"),
				exampleProjects().map(folder -> folder.getFileName().toString()).toList());
	}

	@ParameterizedTest
	@MethodSource("shipped")
	void isReadAndLinkedWithoutAProblem(Path file) {
		assertEquals(List.of(), HullTexts.describe(HullTexts.problems(new HullTexts().read(file))));
	}

	@ParameterizedTest
	@MethodSource("inventions")
	void saysThatItIsInventedBeforeItSaysAnythingElse(Path file) throws IOException {
		String opening = Files.readString(file).lines().takeWhile(line -> line.startsWith("//")).reduce("", String::concat);
		assertTrue(opening.toLowerCase().contains("invented"), file + " begins with: " + opening);
	}

	@ParameterizedTest
	@MethodSource("exampleProjects")
	void aProjectHasOneProfile(Path folder) throws IOException {
		HullTexts project = new HullTexts();
		try (Stream<Path> files = Files.list(folder)) {
			long profiles = files.filter(file -> file.toString().endsWith(".hull"))
					.flatMap(file -> HullTexts.spec(project.read(file)).getDeclarations().stream())
					.filter(Profile.class::isInstance)
					.count();
			assertEquals(1, profiles);
		}
	}
}
