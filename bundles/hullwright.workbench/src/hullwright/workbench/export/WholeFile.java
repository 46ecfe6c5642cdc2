/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.export;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes files that leave the window whole or not at all: to another file beside, which is then moved.
 */
public final class WholeFile {

	private WholeFile() {
	}

	/**
	 * Writes a file, new or in place of what is there.
	 *
	 * @throws IOException if it cannot be written; what was there is as it was
	 */
	public static void write(Path file, byte[] content) throws IOException {
		// not a temporary file of the system, which nobody else might read
		Path written = file.toAbsolutePath().resolveSibling("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".new");
		try {
			Files.write(written, content, StandardOpenOption.CREATE_NEW);
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
