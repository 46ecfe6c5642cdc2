/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.guards;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.rules.RuleApi;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import org.junit.jupiter.api.Test;

/**
 * Guards what is open to plugins: in OSGi the manifests say it, on a plain class path {@link RuleApi} does, and both say the same.
 */
class RuleApiTest {

	private static Attributes manifest(String bundle) throws IOException {
		Path manifest = Repository.root().resolve("bundles").resolve(bundle).resolve("META-INF/MANIFEST.MF");
		try (InputStream content = Files.newInputStream(manifest)) {
			return new Manifest(content).getMainAttributes();
		}
	}

	@Test
	void thePackagesAreThoseThatTheBundlesExport() throws IOException {
		Set<String> exported = new TreeSet<>();
		for (String bundle : RuleApi.BUNDLES) {
			exported.addAll(Arrays.asList(manifest(bundle).getValue("Export-Package").split(",\\s*")));
		}
		assertEquals(exported, new TreeSet<>(RuleApi.PACKAGES));
	}

	@Test
	void theVersionIsThatOfEachBundle() throws IOException {
		for (String bundle : RuleApi.BUNDLES) {
			assertEquals(RuleApi.VERSION + ".qualifier", manifest(bundle).getValue("Bundle-Version"), bundle);
		}
	}
}
