/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The plugins of a project and of its user, and which of them are trusted.
 *
 * @param plugins all that were found, by file
 * @param trusted the checksums that are trusted
 */
public record HousePlugins(List<HousePlugin> plugins, List<String> trusted) {

	public HousePlugins {
		plugins = List.copyOf(plugins);
		trusted = List.copyOf(trusted);
	}

	/** What becomes of a plugin. */
	public enum State {
		/** Its rules run. */
		ON,
		/** Nobody trusts its checksum. */
		NOT_TRUSTED,
		/** It cannot be used. */
		REFUSED
	}

	/**
	 * The plugins that are there, and whether they are trusted. Of two versions of one plugin neither is used, since nobody could
	 * tell which was meant; a second copy of the same jar counts for nothing.
	 *
	 * @param found in the order in which they are told
	 * @param trust whose trust counts; without, nothing is trusted
	 */
	public static HousePlugins of(List<HousePlugin> found, Optional<TrustedPlugins> trust) {
		Set<String> seen = new HashSet<>();
		List<HousePlugin> read = found.stream().filter(each -> each.refusal().isPresent() || seen.add(each.sha256())).toList();
		Map<String, List<HousePlugin>> byName = read.stream().filter(each -> each.refusal().isEmpty()).collect(Collectors.groupingBy(HousePlugin::name));
		List<HousePlugin> plugins = read.stream().map(each -> {
			List<HousePlugin> alike = byName.getOrDefault(each.name(), List.of());
			return each.refusal().isPresent() || alike.size() < 2 ? each
					: each.refused("there are two of it: " + alike.stream().map(one -> one.file() + " (" + one.title() + ")").collect(Collectors.joining(", ")));
		}).toList();
		try {
			return new HousePlugins(plugins, plugins.isEmpty() || trust.isEmpty() ? List.of() : trust.get().checksums());
		} catch (IOException e) {
			return new HousePlugins(plugins.stream().map(each -> each.refused("nobody can tell whom you trust: " + trust.orElseThrow().file() + " cannot be read")).toList(), List.of());
		}
	}

	/** What becomes of one of the plugins. */
	public State stateOf(HousePlugin plugin) {
		return plugin.refusal().isPresent() ? State.REFUSED : trusted.contains(plugin.sha256()) ? State.ON : State.NOT_TRUSTED;
	}
}
