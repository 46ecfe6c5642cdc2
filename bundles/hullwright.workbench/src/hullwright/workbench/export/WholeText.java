/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes a text into a file whole or not at all: beside it first, then in its place.
 */
final class WholeText {

	private WholeText() {
	}

	/**
	 * Writes it.
	 *
	 * @throws IOException if it cannot be written; what was there is as it was
	 */
	static void write(Path file, String text) throws IOException {
		Path written = Files.createTempFile(file.toAbsolutePath().getParent(), "." + file.getFileName(), ".new");
		try {
			Files.write(written, text.getBytes(StandardCharsets.UTF_8));
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
