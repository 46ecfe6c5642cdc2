/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;

/**
 * Puts other bytes into a file so that at each moment it holds the old ones or the new ones, whole. Permissions stay.
 *
 * @param file the file itself, no link to it
 * @param expected what it was when it was read; a file that has changed since is left alone
 */
record FileReplacement(Path file, byte[] expected) {

	/**
	 * Replaces the content.
	 *
	 * @throws IOException if the file cannot be written or has changed; it is then as it was
	 */
	void by(byte[] content) throws IOException {
		if (!Files.isWritable(file)) {
			throw new IOException("the file is protected from writing");
		}
		Path written = besideIt();
		try {
			// copied first, so that it has the permissions and, where that is allowed, the owner of the file
			Files.copy(file, written, StandardCopyOption.COPY_ATTRIBUTES, StandardCopyOption.REPLACE_EXISTING);
			if (!Arrays.equals(Files.readAllBytes(written), expected)) {
				throw new IOException("the file was changed meanwhile; lay it out again");
			}
			Files.write(written, content);
			replaceBy(written);
		} finally {
			Files.deleteIfExists(written);
		}
	}

	private Path besideIt() throws IOException {
		try {
			return Files.createTempFile(file.getParent(), "." + file.getFileName(), ".new");
		} catch (FileSystemException e) {
			throw new IOException("no file can be written beside it, in " + file.getParent(), e);
		}
	}

	private void replaceBy(Path written) throws IOException {
		try {
			Files.move(written, file, StandardCopyOption.ATOMIC_MOVE);
		} catch (AtomicMoveNotSupportedException e) {
			Files.move(written, file, StandardCopyOption.REPLACE_EXISTING);
		}
	}
}
