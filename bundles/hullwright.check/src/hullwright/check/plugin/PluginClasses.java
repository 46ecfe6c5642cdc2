/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import hullwright.rules.BoatRule;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;

/**
 * The classes of a plugin. Of ours they see what the API exports, in OSGi and on a plain class path alike, and of others the JDK.
 */
final class PluginClasses extends ClassLoader {

	private static final List<String> API = List.of("hullwright.rules.", "hullwright.network.", "hullwright.analysis.", "hullwright.quantity.");

	private final ClassLoader ours = BoatRule.class.getClassLoader();
	private final Map<String, byte[]> entries;

	PluginClasses(byte[] jar) throws IOException {
		super("house plugin", ClassLoader.getPlatformClassLoader());
		entries = PluginJar.read(jar).entries();
	}

	@Override
	protected Class<?> findClass(String name) throws ClassNotFoundException {
		byte[] content = entries.get(name.replace('.', '/') + ".class");
		if (content != null) {
			return defineClass(name, content, 0, content.length);
		}
		if (API.stream().anyMatch(name::startsWith)) {
			return ours.loadClass(name);
		}
		throw new ClassNotFoundException(name);
	}

	@Override
	public InputStream getResourceAsStream(String name) {
		byte[] content = entries.get(name);
		return content == null ? super.getResourceAsStream(name) : new ByteArrayInputStream(content);
	}
}
