/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import hullwright.rules.RuleApi;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import org.eclipse.osgi.util.ManifestElement;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.Version;
import org.osgi.framework.VersionRange;

/**
 * What the manifest of a plugin says: the headers that every OSGi bundle has.
 *
 * @param name its name
 * @param version its version
 * @param needs the header in which it names what it needs, if it has one
 */
record PluginManifest(String name, Version version, Optional<String> needs) {

	static PluginManifest of(Map<String, byte[]> entries) throws PluginRefused {
		byte[] manifest = entries.get(JarFile.MANIFEST_NAME);
		if (manifest == null) {
			throw new PluginRefused("it is no plugin: it has no " + JarFile.MANIFEST_NAME);
		}
		try {
			Attributes headers = new Manifest(new ByteArrayInputStream(manifest)).getMainAttributes();
			ManifestElement[] name = ManifestElement.parseHeader(Constants.BUNDLE_SYMBOLICNAME, headers.getValue(Constants.BUNDLE_SYMBOLICNAME));
			if (name == null || name.length != 1) {
				throw new PluginRefused("it is no plugin: its manifest has no " + Constants.BUNDLE_SYMBOLICNAME);
			}
			if (headers.getValue(Constants.BUNDLE_NATIVECODE) != null) {
				throw new PluginRefused("it asks for native code with " + Constants.BUNDLE_NATIVECODE + ", and rules are Java only");
			}
			String classPath = headers.getValue(Constants.BUNDLE_CLASSPATH);
			if (classPath != null && !classPath.strip().equals(".")) {
				throw new PluginRefused("it has a " + Constants.BUNDLE_CLASSPATH + "; what a plugin needs is unpacked into its jar");
			}
			return new PluginManifest(name[0].getValue(), Version.parseVersion(headers.getValue(Constants.BUNDLE_VERSION)),
					Optional.ofNullable(headers.getValue(Constants.REQUIRE_BUNDLE)));
		} catch (IOException | BundleException | IllegalArgumentException e) {
			throw new PluginRefused("it has a manifest that cannot be read: " + e.getMessage());
		}
	}

	/** A plugin names the versions of the API that it was written for, and needs nothing else. */
	void refuseUnknownNeeds() throws PluginRefused {
		try {
			boolean named = false;
			ManifestElement[] elements = ManifestElement.parseHeader(Constants.REQUIRE_BUNDLE, needs.orElse(null));
			for (ManifestElement need : elements == null ? new ManifestElement[0] : elements) {
				refuseIfUnknown(need);
				named |= need.getValue().equals(RuleApi.BUNDLE) && need.getAttribute(Constants.BUNDLE_VERSION_ATTRIBUTE) != null;
			}
			if (!named) {
				throw new PluginRefused("it does not say for which versions of the rules it was written; its manifest needs " + Constants.REQUIRE_BUNDLE + ": "
						+ RuleApi.BUNDLE + ";bundle-version=\"[0.1,0.2)\"");
			}
		} catch (BundleException | IllegalArgumentException e) {
			throw new PluginRefused("it has a manifest that cannot be read: " + e.getMessage());
		}
	}

	private static void refuseIfUnknown(ManifestElement need) throws PluginRefused {
		if (!RuleApi.BUNDLES.contains(need.getValue())) {
			throw new PluginRefused("it needs " + need.getValue() + "; a plugin has " + String.join(", ", RuleApi.BUNDLES) + " and Java");
		}
		String range = need.getAttribute(Constants.BUNDLE_VERSION_ATTRIBUTE);
		if (range != null && !VersionRange.valueOf(range).includes(Version.parseVersion(RuleApi.VERSION))) {
			throw new PluginRefused("it needs " + need.getValue() + " " + range + ", and this is " + RuleApi.VERSION);
		}
	}
}
