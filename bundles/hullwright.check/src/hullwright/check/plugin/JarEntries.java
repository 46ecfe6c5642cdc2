/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Unpacks jars in memory, with an eye on what should not be in them.
 */
final class JarEntries {

	private static final int LARGEST_UNPACKED = 100_000_000;
	private static final int MOST_ENTRIES = 10_000;
	private static final List<String> NATIVE = List.of(".so", ".dll", ".dylib", ".jnilib", ".exe");
	/** A zip file ends with its table of contents, whose last record begins so and may be followed by a comment. */
	private static final byte[] END = { 'P', 'K', 5, 6 };
	private static final int LONGEST_END = 22 + 0xffff;

	private JarEntries() {
	}

	static Map<String, byte[]> of(byte[] jar) throws PluginRefused {
		if (jar.length < 2 || jar[0] != 'P' || jar[1] != 'K') {
			throw new PluginRefused("it is no jar");
		}
		if (!ends(jar)) {
			throw new PluginRefused("it is a jar whose end is missing");
		}
		Map<String, byte[]> entries = new HashMap<>();
		int unpacked = 0;
		try (ZipInputStream content = new ZipInputStream(new ByteArrayInputStream(jar))) {
			for (ZipEntry entry = content.getNextEntry(); entry != null; entry = content.getNextEntry()) {
				if (entry.isDirectory()) {
					continue;
				}
				byte[] bytes = content.readNBytes(LARGEST_UNPACKED - unpacked);
				unpacked += bytes.length;
				refuseUnfit(entry.getName());
				if (unpacked >= LARGEST_UNPACKED || entries.size() >= MOST_ENTRIES) {
					throw new PluginRefused("it unpacks to more than a plugin may have, " + LARGEST_UNPACKED / 1_000_000 + " MB in " + MOST_ENTRIES + " files");
				}
				if (entries.put(entry.getName(), bytes) != null) {
					throw new PluginRefused("it holds " + entry.getName() + " twice");
				}
			}
		} catch (IOException | IllegalArgumentException e) {
			throw new PluginRefused("it is a damaged jar: " + e.getMessage());
		}
		return entries;
	}

	private static boolean ends(byte[] jar) {
		for (int at = jar.length - END.length; at >= Math.max(0, jar.length - LONGEST_END); at--) {
			if (jar[at] == END[0] && jar[at + 1] == END[1] && jar[at + 2] == END[2] && jar[at + 3] == END[3]) {
				return true;
			}
		}
		return false;
	}

	private static void refuseUnfit(String entry) throws PluginRefused {
		String name = entry.toLowerCase(Locale.ROOT);
		if (NATIVE.stream().anyMatch(name::endsWith)) {
			throw new PluginRefused("it holds native code, " + entry + ", and rules are Java only");
		}
		if (name.endsWith(".jar")) {
			throw new PluginRefused("it holds another jar, " + entry + "; what a plugin needs is unpacked into it");
		}
		if (name.startsWith("hullwright/") && name.endsWith(".class")) {
			throw new PluginRefused("it holds the class " + entry + ", and the packages hullwright are not for plugins");
		}
	}
}
