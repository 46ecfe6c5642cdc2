/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.Locale;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Copies a jar without its signature: class-data sharing leaves signed classes out. Nothing else is changed. The copy is
 * made for one machine from files that Maven has checked against their checksums; it is not for passing on.
 */
final class UnsignedCopy {

	private UnsignedCopy() {
	}

	/**
	 * Copies a jar into a folder, under a name that changes when the content does, so that a running program keeps what it
	 * has opened. A copy that is there already is left alone.
	 */
	static Path of(Path jar, String name, Path folder) throws IOException {
		Path copy = folder.resolve(name + "-" + fingerprint(jar) + ".jar");
		if (Files.exists(copy)) {
			return copy;
		}
		Path unfinished = Files.createTempFile(folder, name, ".part");
		try {
			write(jar, unfinished);
			Files.move(unfinished, copy, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
		} finally {
			Files.deleteIfExists(unfinished);
		}
		return copy;
	}

	private static String fingerprint(Path jar) throws IOException {
		CRC32 sum = new CRC32();
		try (ZipFile file = new ZipFile(jar.toFile())) {
			for (ZipEntry entry : Collections.list(file.entries())) {
				sum.update((entry.getName() + ":" + entry.getCrc() + ";").getBytes(java.nio.charset.StandardCharsets.UTF_8));
			}
		}
		return String.format(Locale.ROOT, "%08x", sum.getValue());
	}

	private static void write(Path jar, Path copy) throws IOException {
		try (JarFile from = new JarFile(jar.toFile(), false); OutputStream file = Files.newOutputStream(copy);
				ZipOutputStream to = new ZipOutputStream(file)) {
			Manifest manifest = from.getManifest();
			if (manifest != null) {
				to.putNextEntry(new ZipEntry(JarFile.MANIFEST_NAME));
				withoutDigests(manifest).write(to);
				to.closeEntry();
			}
			for (ZipEntry entry : Collections.list(from.entries())) {
				if (entry.isDirectory() || belongsToSignature(entry.getName()) || entry.getName().equals(JarFile.MANIFEST_NAME)) {
					continue;
				}
				ZipEntry same = new ZipEntry(entry.getName());
				same.setTime(entry.getTime());
				to.putNextEntry(same);
				try (InputStream content = from.getInputStream(entry)) {
					content.transferTo(to);
				}
				to.closeEntry();
			}
		}
	}

	private static Manifest withoutDigests(Manifest signed) {
		Manifest plain = new Manifest();
		plain.getMainAttributes().putAll(signed.getMainAttributes());
		signed.getEntries().forEach((name, attributes) -> {
			Attributes kept = new Attributes();
			attributes.forEach((key, value) -> {
				if (!key.toString().toUpperCase(Locale.ROOT).contains("-DIGEST")) {
					kept.put(key, value);
				}
			});
			if (!kept.isEmpty()) {
				plain.getEntries().put(name, kept);
			}
		});
		return plain;
	}

	static boolean belongsToSignature(String entry) {
		String name = entry.toUpperCase(Locale.ROOT);
		return name.matches("META-INF/[^/]+\\.(SF|RSA|DSA|EC)") || name.matches("META-INF/SIG-[^/]+");
	}
}
