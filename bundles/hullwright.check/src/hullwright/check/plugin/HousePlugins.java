/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
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
	 * The plugins among jars. Of two versions of one plugin neither is used, since nobody could tell which was meant.
	 *
	 * @param jars by where they were found
	 */
	public static HousePlugins of(SortedMap<String, byte[]> jars, TrustedPlugins trust) {
		List<HousePlugin> read = new ArrayList<>();
		jars.forEach((file, bytes) -> read.add(PluginJar.plugin(file, bytes)));
		Map<String, List<HousePlugin>> byName = read.stream().filter(each -> each.refusal().isEmpty()).collect(Collectors.groupingBy(HousePlugin::name));
		List<HousePlugin> plugins = read.stream().map(each -> {
			List<HousePlugin> alike = byName.getOrDefault(each.name(), List.of());
			return each.refusal().isPresent() || alike.size() < 2 ? each
					: each.refused("there are two of it: " + alike.stream().map(one -> one.file() + " (" + one.title() + ")").collect(Collectors.joining(", ")));
		}).toList();
		try {
			return new HousePlugins(plugins, trust.checksums());
		} catch (IOException e) {
			return new HousePlugins(plugins.stream().map(each -> each.refused("nobody can tell whom you trust: " + trust.file() + " cannot be read")).toList(), List.of());
		}
	}

	/**
	 * The jars in a folder; none if there is no such folder.
	 *
	 * @param shown how the folder is called, with a '/' at its end
	 */
	public static SortedMap<String, byte[]> jarsIn(Path folder, String shown) {
		SortedMap<String, byte[]> jars = new TreeMap<>();
		if (Files.isDirectory(folder)) {
			try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.jar")) {
				for (Path file : files) {
					jars.put(shown + file.getFileName(), bytes(file));
				}
			} catch (IOException e) {
				// a folder that cannot be listed has no jars that could be run
				return jars;
			}
		}
		return jars;
	}

	/** The bytes of a jar; none if it cannot be read, which makes it no plugin. */
	private static byte[] bytes(Path file) {
		try {
			return Files.readAllBytes(file);
		} catch (IOException e) {
			return new byte[0];
		}
	}

	/** What becomes of one of the plugins. */
	public State stateOf(HousePlugin plugin) {
		return plugin.refusal().isPresent() ? State.REFUSED : trusted.contains(plugin.sha256()) ? State.ON : State.NOT_TRUSTED;
	}
}
