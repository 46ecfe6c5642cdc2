/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.JsonObject;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The plugins with rules of the house that one project has.
 *
 * @param project what people call the project, empty outside of any
 * @param plugins the plugins
 * @param folders where a jar would be found, in words
 */
public record PluginListing(String project, List<Plugin> plugins, String folders) {

	/** The version of the JSON format; it changes when a reader of the old one would stumble. */
	public static final int VERSION = 1;

	public PluginListing {
		plugins = List.copyOf(plugins);
	}

	/** Whether the rules of a plugin run. */
	public enum State {
		/** They run. */
		ON,
		/** Nobody trusts it yet. */
		NOT_TRUSTED,
		/** It cannot be used. */
		REFUSED
	}

	/**
	 * A jar with rules of the house.
	 *
	 * @param name its name
	 * @param version its version, empty if it has none
	 * @param state whether its rules run
	 * @param file where it is
	 * @param rules the ids of its rules, or their classes as long as it does not run
	 * @param refusal why it cannot be used, if so
	 * @param sha256 the SHA-256 of the jar, in hexadecimal
	 */
	public record Plugin(String name, String version, State state, String file, List<String> rules, Optional<String> refusal, String sha256) {

		public Plugin {
			rules = List.copyOf(rules);
		}
	}

	/** For people. */
	public static String text(List<PluginListing> listings) {
		StringBuilder text = new StringBuilder();
		for (PluginListing listing : listings) {
			listing.plugins.forEach(plugin -> add(plugin, text));
			if (listing.plugins.isEmpty()) {
				text.append("No plugins here: a jar with rules of the house belongs into ").append(listing.folders).append(".\n");
			}
		}
		return text.toString();
	}

	private static void add(Plugin plugin, StringBuilder text) {
		String title = plugin.version.isEmpty() ? plugin.name : plugin.name + " " + plugin.version;
		text.append("%-40s %-12s %s%n".formatted(title, plugin.state.name().toLowerCase(Locale.ROOT).replace('_', ' '), plugin.file));
		plugin.refusal.ifPresent(why -> text.append("  ").append(why).append('\n'));
		plugin.rules.forEach(rule -> text.append("  rule ").append(rule).append('\n'));
		text.append("  SHA-256 ").append(plugin.sha256).append('\n');
	}

	/** For programs, after the schema {@code plugins-1.schema.json} of this bundle. */
	public static String json(List<PluginListing> listings) {
		JsonObject document = new JsonObject();
		document.addProperty("format", "hullwright-plugins");
		document.addProperty("version", VERSION);
		document.add("projects", JsonText.array(listings, PluginListing::json));
		return JsonText.of(document);
	}

	private static JsonObject json(PluginListing listing) {
		JsonObject json = new JsonObject();
		json.addProperty("project", listing.project);
		json.add("plugins", JsonText.array(listing.plugins, PluginListing::json));
		return json;
	}

	private static JsonObject json(Plugin plugin) {
		JsonObject json = new JsonObject();
		json.addProperty("name", plugin.name);
		json.addProperty("version", plugin.version);
		json.addProperty("state", JsonText.word(plugin.state));
		json.addProperty("file", plugin.file);
		json.addProperty("sha256", plugin.sha256);
		json.add("rules", JsonText.array(plugin.rules));
		plugin.refusal.ifPresent(why -> json.addProperty("refusal", why));
		return json;
	}
}
