/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UnsignedCopyTest {

	@TempDir
	private Path folder;

	@Test
	void signatureAndDigestsGoAndTheRestStays() throws IOException {
		Path copy = UnsignedCopy.of(jar("text"), "part", folder);
		try (JarFile file = new JarFile(copy.toFile())) {
			assertNull(file.getEntry("META-INF/MAKER.SF"));
			assertNull(file.getEntry("META-INF/MAKER.RSA"));
			assertEquals("part", file.getManifest().getMainAttributes().getValue("Bundle-SymbolicName"));
			assertTrue(file.getManifest().getEntries().isEmpty());
			assertEquals("text", new String(file.getInputStream(file.getEntry("standard/parts.hull")).readAllBytes()));
			assertFalse(file.getEntry("standard/parts.hull").isDirectory());
		}
	}

	@Test
	void anotherContentHasAnotherName() throws IOException {
		Path first = UnsignedCopy.of(jar("text"), "part", folder);
		assertEquals(first, UnsignedCopy.of(jar("text"), "part", folder));
		Path second = UnsignedCopy.of(jar("other"), "part", folder);
		assertFalse(first.equals(second));
		assertTrue(Files.exists(first), "a program may still run on it");
	}

	private Path jar(String content) throws IOException {
		Path jar = folder.resolve("part.jar");
		try (ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(jar))) {
			put(to, "META-INF/MANIFEST.MF",
					"Manifest-Version: 1.0\nBundle-SymbolicName: part\n\nName: standard/parts.hull\nSHA-256-Digest: AAAA\n\n");
			put(to, "META-INF/MAKER.SF", "Signature-Version: 1.0\n");
			put(to, "META-INF/MAKER.RSA", "?");
			put(to, "standard/parts.hull", content);
		}
		return jar;
	}

	private static void put(ZipOutputStream to, String name, String content) throws IOException {
		to.putNextEntry(new ZipEntry(name));
		to.write(content.getBytes());
		to.closeEntry();
	}
}
