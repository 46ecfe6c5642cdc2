/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import hullwright.rules.RuleApi;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.Map;

/**
 * Loads the classes of one plugin: its own, Java's and those of the rule API. The same inside OSGi and on a plain class
 * path. It keeps code apart, and it is no guard: what a plugin does, it does with the rights of the user.
 */
final class PluginClasses extends ClassLoader {

	private final Map<String, byte[]> entries;

	/**
	 * The classes of a plugin.
	 *
	 * @throws PluginRefused if its jar cannot be read
	 */
	PluginClasses(HousePlugin plugin) throws PluginRefused {
		super(plugin.name(), new OpenPackages());
		entries = JarEntries.of(plugin.bytes());
	}

	@Override
	protected Class<?> findClass(String name) throws ClassNotFoundException {
		byte[] bytes = entries.get(name.replace('.', '/') + ".class");
		if (bytes == null) {
			throw new ClassNotFoundException(name + " is neither in the jar of " + getName() + " nor open to plugins");
		}
		return defineClass(name, bytes, 0, bytes.length);
	}

	@Override
	public InputStream getResourceAsStream(String name) {
		byte[] bytes = entries.get(name);
		return bytes == null ? super.getResourceAsStream(name) : new ByteArrayInputStream(bytes);
	}

	/** Java's classes and those of the packages that the API exports. */
	private static final class OpenPackages extends ClassLoader {

		private static final ClassLoader ENGINE = PluginClasses.class.getClassLoader();

		OpenPackages() {
			super(ClassLoader.getPlatformClassLoader());
		}

		@Override
		protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
			int end = name.lastIndexOf('.');
			return end > 0 && RuleApi.PACKAGES.contains(name.substring(0, end)) ? ENGINE.loadClass(name) : super.loadClass(name, resolve);
		}
	}
}
