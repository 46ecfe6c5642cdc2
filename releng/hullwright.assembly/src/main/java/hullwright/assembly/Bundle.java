/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.ManifestElement;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.w3c.dom.Element;

/**
 * What a jar says of itself that matters for a class path.
 *
 * @param name the symbolic name
 * @param fragment whether it is part of another bundle, for one platform or one language
 * @param needsBundles the bundles that it cannot do without
 * @param needsPackages the packages that it cannot do without
 * @param offersPackages the packages that others may use
 * @param extensionPoints the extension points that it declares, by full identifier
 * @param contributesTo the extension points that it contributes to, by full identifier
 */
record Bundle(String name, Path jar, boolean fragment, Set<String> needsBundles, Set<String> needsPackages,
		Set<String> offersPackages, Set<String> extensionPoints, Set<String> contributesTo) {

	/**
	 * Reads a jar.
	 *
	 * @param wrappedName the symbolic name that the target gives to a jar without one
	 */
	static Bundle read(Path jar, Optional<String> wrappedName) throws IOException {
		try (JarFile file = new JarFile(jar.toFile())) {
			Manifest manifest = file.getManifest();
			Attributes headers = manifest == null ? new Attributes() : manifest.getMainAttributes();
			String name = wrappedName.orElseGet(() -> first(headers, Constants.BUNDLE_SYMBOLICNAME, jar));
			Set<String> offers = wrappedName.isPresent() ? packages(file) : values(headers, Constants.EXPORT_PACKAGE, jar);
			Set<String> points = new LinkedHashSet<>();
			Set<String> contributions = new LinkedHashSet<>();
			readExtensions(file, name, points, contributions);
			return new Bundle(name, jar, headers.getValue(Constants.FRAGMENT_HOST) != null,
					values(headers, Constants.REQUIRE_BUNDLE, jar), values(headers, Constants.IMPORT_PACKAGE, jar), offers, points,
					contributions);
		}
	}

	private static void readExtensions(JarFile file, String name, Set<String> points, Set<String> contributions)
			throws IOException {
		JarEntry descriptor = file.getJarEntry("plugin.xml");
		if (descriptor == null) {
			return;
		}
		try (InputStream content = file.getInputStream(descriptor)) {
			Element plugin = XmlFile.read(content, file.getName() + "!/plugin.xml");
			for (Element point : XmlFile.all(plugin, "extension-point")) {
				String id = point.getAttribute("id");
				points.add(id.contains(".") ? id : name + "." + id);
			}
			for (Element extension : XmlFile.all(plugin, "extension")) {
				contributions.add(extension.getAttribute("point"));
			}
		}
	}

	private static Set<String> packages(JarFile file) {
		return file.stream().map(JarEntry::getName)
				.filter(entry -> entry.endsWith(".class") && entry.contains("/") && !entry.startsWith("META-INF/"))
				.map(entry -> entry.substring(0, entry.lastIndexOf('/')).replace('/', '.'))
				.collect(Collectors.toCollection(LinkedHashSet::new));
	}

	private static String first(Attributes headers, String header, Path jar) {
		return values(headers, header, jar).stream().findFirst()
				.orElseThrow(() -> new IllegalArgumentException(jar + " has no " + header));
	}

	/** What a header lists, without what it calls optional. */
	private static Set<String> values(Attributes headers, String header, Path jar) {
		try {
			ManifestElement[] elements = ManifestElement.parseHeader(header, headers.getValue(header));
			Set<String> values = new LinkedHashSet<>();
			for (ManifestElement element : elements == null ? new ManifestElement[0] : elements) {
				if (!Constants.RESOLUTION_OPTIONAL.equals(element.getDirective(Constants.RESOLUTION_DIRECTIVE))
						&& !"true".equals(element.getAttribute("optional"))) {
					values.addAll(Set.of(element.getValueComponents()));
				}
			}
			return values;
		} catch (BundleException e) {
			throw new IllegalArgumentException(jar + ": " + e.getMessage(), e);
		}
	}
}
