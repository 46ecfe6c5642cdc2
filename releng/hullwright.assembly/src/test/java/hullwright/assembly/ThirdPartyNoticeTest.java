/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/**
 * Holds the third-party notices against the target file, the poms of this project and the poms of the artifacts.
 */
class ThirdPartyNoticeTest {

	/** What may be passed on beside the EPL-2.0. */
	private static final Set<String> ALLOWED = Set.of("EPL-2.0", "Apache-2.0", "MIT", "BSD-2-Clause", "BSD-3-Clause", "0BSD",
			"MPL-2.0", "W3C", "Unicode-3.0", "public domain");
	/** What may be used for building, since it is not passed on. */
	private static final Set<String> ALLOWED_IN_BUILD = Set.of("EPL-1.0", "GPL-2.0-only WITH Classpath-exception-2.0");

	private final Path root = Path.of(System.getProperty("hullwright.root"));
	private final Path repository = Path.of(System.getProperty("hullwright.repository"));
	private final Map<Artifact, String> shipped = new LinkedHashMap<>();
	private final Map<Artifact, String> forBuilding = new LinkedHashMap<>();

	@BeforeEach
	void readNotice() throws IOException {
		Map<Artifact, String> section = null;
		for (String line : Files.readAllLines(root.resolve("releng/third-party.md"))) {
			if (line.startsWith("## ")) {
				section = line.equals("## In the product") ? shipped : forBuilding;
			} else if (line.startsWith("| ") && line.contains(":")) {
				String[] cells = line.split("\\s*\\|\\s*");
				String[] name = cells[1].split(":");
				section.put(new Artifact(name[0], name[1], cells[2]), cells[3]);
			}
		}
	}

	@Test
	void everyArtifactOfTheTargetIsListed() throws IOException {
		assertListed(TargetFile.of(root).artifacts());
	}

	@Test
	void everyDependencyOfThePomsIsListed() throws IOException {
		Map<String, String> versions = new LinkedHashMap<>();
		Element properties = XmlFile.child(XmlFile.read(root.resolve("pom.xml")), "properties").orElseThrow();
		for (Element property : XmlFile.all(properties, "*")) {
			versions.put("${" + property.getTagName() + "}", property.getTextContent().strip());
		}
		Set<Artifact> dependencies = new java.util.LinkedHashSet<>();
		for (Path pom : poms()) {
			for (Element dependency : XmlFile.all(XmlFile.read(pom), "dependency")) {
				XmlFile.artifact(dependency).filter(artifact -> !artifact.groupId().startsWith("hullwright"))
						.map(artifact -> new Artifact(artifact.groupId(), artifact.artifactId(),
								versions.getOrDefault(artifact.version(), artifact.version())))
						.ifPresent(dependencies::add);
			}
		}
		assertTrue(dependencies.size() > 10, "the poms were read");
		assertListed(dependencies);
	}

	@Test
	void nothingIsListedTwice() {
		assertEquals(Set.of(), shipped.keySet().stream().filter(forBuilding::containsKey).collect(java.util.stream.Collectors.toSet()));
	}

	@Test
	void everyLicenceIsAllowed() {
		shipped.forEach((artifact, licence) -> assertTrue(allows(licence, false), artifact + ": " + licence));
		forBuilding.forEach((artifact, licence) -> assertTrue(allows(licence, true), artifact + ": " + licence));
	}

	@Test
	void licencesOutsideTheListAreFound() {
		assertTrue(allows("LGPL-2.1-or-later OR Apache-2.0", false));
		assertTrue(!allows("LGPL-2.1-or-later", false));
		assertTrue(!allows("MIT AND GPL-3.0-only", false));
		assertTrue(!allows("EPL-1.0", false));
	}

	@Test
	void licencesAreThoseOfThePoms() throws IOException {
		TreeSet<String> wrong = new TreeSet<>();
		int compared = 0;
		for (Map.Entry<Artifact, String> listed : shipped.entrySet()) {
			List<String> declared = declaredLicences(listed.getKey());
			compared += declared.isEmpty() ? 0 : 1;
			for (String name : declared) {
				if (!listed.getValue().contains(spdx(name))) {
					wrong.add(listed.getKey() + ": listed as " + listed.getValue() + ", its pom says " + name);
				}
			}
		}
		assertEquals(Set.of(), wrong);
		assertTrue(compared > shipped.size() / 2, "only " + compared + " poms were found");
	}

	/** The licences of an artifact's pom or of the nearest parent that names some; empty where no pom at hand does. */
	private List<String> declaredLicences(Artifact artifact) throws IOException {
		Optional<Artifact> next = Optional.of(artifact);
		while (next.isPresent() && Files.exists(next.get().pomIn(repository))) {
			Element pom = XmlFile.read(next.get().pomIn(repository));
			List<String> names = XmlFile.all(pom, "license").stream().flatMap(licence -> XmlFile.text(licence, "name").stream()).toList();
			if (!names.isEmpty()) {
				return names;
			}
			next = XmlFile.child(pom, "parent").flatMap(XmlFile::artifact);
		}
		return List.of();
	}

	private static String spdx(String name) {
		String words = name.toLowerCase(java.util.Locale.ROOT);
		if (words.contains("lgpl")) {
			return "LGPL-2.1-or-later";
		}
		if (words.contains("gpl2 w/ cpe")) {
			return "GPL-2.0-only WITH Classpath-exception-2.0";
		}
		if (words.contains("apache")) {
			return "Apache-2.0";
		}
		if (words.contains("eclipse public license") || words.startsWith("epl")) {
			return words.contains("1.0") ? "EPL-1.0" : "EPL-2.0";
		}
		if (words.contains("bouncy castle") || words.contains("mit")) {
			return "MIT";
		}
		return words.equals("public domain") ? words : name;
	}

	private static boolean allows(String licence, boolean inBuild) {
		return Arrays.stream(licence.split(" OR ")).anyMatch(choice -> Arrays.stream(choice.split(" AND "))
				.allMatch(one -> ALLOWED.contains(one) || inBuild && ALLOWED_IN_BUILD.contains(one)));
	}

	private void assertListed(Set<Artifact> artifacts) {
		assertEquals(List.of(), artifacts.stream().filter(one -> !shipped.containsKey(one) && !forBuilding.containsKey(one)).toList());
	}

	private List<Path> poms() throws IOException {
		try (Stream<Path> files = Files.walk(root, 4)) {
			return files.filter(file -> file.endsWith("pom.xml") && !file.toString().contains("/target/")).toList();
		}
	}
}
