/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes files whole or not at all: to another file beside, which is then moved.
 */
final class WholeFile {

	private WholeFile() {
	}

	/**
	 * Writes a text into a file.
	 *
	 * @throws Refusal if it cannot be written; what was there is as it was
	 */
	static void writeOrRefuse(Path file, String text) {
		try {
			write(file, text.getBytes(StandardCharsets.UTF_8));
		} catch (IOException e) {
			throw new Refusal(file + " cannot be written: " + e.getMessage());
		}
	}

	/**
	 * Writes a file, new or in place of what is there.
	 *
	 * @throws IOException if it cannot be written; what was there is as it was
	 */
	static void write(Path file, byte[] content) throws IOException {
		if (Files.isDirectory(file)) {
			throw new FileSystemException(file.toString(), null, "it is a folder");
		}
		Path folder = file.toAbsolutePath().getParent();
		if (!Files.isDirectory(folder)) {
			throw new FileSystemException(file.toString(), null, "there is no folder " + folder);
		}
		Path written = folder.resolve("." + file.getFileName() + ".new");
		try {
			Files.write(written, content);
			try {
				Files.move(written, file, StandardCopyOption.ATOMIC_MOVE);
			} catch (AtomicMoveNotSupportedException e) {
				Files.move(written, file, StandardCopyOption.REPLACE_EXISTING);
			}
		} finally {
			Files.deleteIfExists(written);
		}
	}
}
