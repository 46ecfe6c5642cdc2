/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A jar as text: its manifest and its entries, each time the same bytes. Classes in it are none.
 */
final class JarText {

	private final Map<String, String> headers = new TreeMap<>();
	private final Map<String, String> entries = new TreeMap<>();

	/** A plugin of an invented yard that nothing is wrong with. */
	static JarText plugin() {
		return new JarText()
				.header("Bundle-SymbolicName", "fabelholm.rules;singleton:=true")
				.header("Bundle-Version", "1.2.0")
				.header("Require-Bundle", "hullwright.rules;bundle-version=\"[0.1,0.2)\"")
				.entry("plugin.xml", "<plugin><extension point='hullwright.rules.rule'><rule class='fabelholm.SparePort'/></extension></plugin>")
				.entry("fabelholm/SparePort.class", "no class");
	}

	/** The same with a header, or without it. */
	JarText header(String name, String value) {
		headers.put(name, value);
		headers.values().removeIf(each -> each == null);
		return this;
	}

	/** The same with an entry, or without it. */
	JarText entry(String path, String text) {
		entries.put(path, text);
		entries.values().removeIf(each -> each == null);
		return this;
	}

	byte[] bytes() throws IOException {
		StringBuilder manifest = new StringBuilder("Manifest-Version: 1.0\n");
		headers.forEach((name, value) -> manifest.append(name).append(": ").append(value.replaceAll("(.{40})(?=.)", "$1\n ")).append('\n'));
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		try (ZipOutputStream jar = new ZipOutputStream(bytes)) {
			add(jar, JarFile.MANIFEST_NAME, manifest.toString());
			for (Map.Entry<String, String> each : entries.entrySet()) {
				add(jar, each.getKey(), each.getValue());
			}
		}
		return bytes.toByteArray();
	}

	private static void add(ZipOutputStream jar, String path, String text) throws IOException {
		ZipEntry entry = new ZipEntry(path);
		entry.setTime(0);
		jar.putNextEntry(entry);
		jar.write(text.getBytes(StandardCharsets.UTF_8));
		jar.closeEntry();
	}
}
