/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads what a jar says of itself, without running anything of it.
 */
final class PluginJar {

	private PluginJar() {
	}

	/** The plugin that a jar is, refused if it is none or none for this version. */
	static HousePlugin plugin(PluginFile jar) {
		HousePlugin plugin = new HousePlugin(jar.file(), jar.file().substring(jar.file().lastIndexOf('/') + 1), "", jar.sha256(), List.of(), Optional.empty(),
				jar.bytes());
		if (jar.problem().isPresent()) {
			return plugin.refused(jar.problem().get());
		}
		try {
			Map<String, byte[]> entries = JarEntries.of(jar.bytes());
			PluginManifest manifest = PluginManifest.of(entries);
			plugin = plugin.named(manifest.name(), manifest.version());
			manifest.refuseUnknownNeeds();
			return plugin.contributing(ContributedRules.of(entries));
		} catch (PluginRefused e) {
			return plugin.refused(e.getMessage());
		}
	}
}
