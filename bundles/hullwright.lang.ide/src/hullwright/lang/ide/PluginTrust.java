/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.check.ProjectProblem;
import hullwright.check.plugin.HousePlugin;
import hullwright.check.plugin.PluginFile;
import hullwright.check.plugin.TrustedPlugins;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Lets a person who has seen what a plugin is trust it: exactly the bytes that were looked at.
 */
public final class PluginTrust {

	private final HousePlugin plugin;

	private PluginTrust(HousePlugin plugin) {
		this.plugin = plugin;
	}

	/** Looks at a jar. Nothing of it runs. */
	public static PluginTrust in(Path jar) {
		return new PluginTrust(HousePlugin.of(PluginFile.at(jar)));
	}

	/** Whether findings of this rule are about a plugin that nobody trusts yet. */
	public static boolean isWanted(String rule) {
		return rule.equals(ProjectProblem.PLUGIN_OFF);
	}

	/** Its name and version. */
	public String title() {
		return plugin.title();
	}

	/** The SHA-256 of the jar, in hexadecimal. */
	public String sha256() {
		return plugin.sha256();
	}

	/** The classes that it brings as rules. */
	public List<String> rules() {
		return plugin.rules();
	}

	/** Why it cannot be used, trusted or not, in words. */
	public Optional<String> refusal() {
		return plugin.refusal();
	}

	/**
	 * Trusts it from now on, for all projects of this user.
	 *
	 * @throws IOException if the list of those that are trusted cannot be changed
	 */
	public void give() throws IOException {
		TrustedPlugins.ofUser().trust(plugin, LocalDate.now());
	}
}
