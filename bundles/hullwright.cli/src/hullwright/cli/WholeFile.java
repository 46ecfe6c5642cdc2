/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes files whole or not at all: to another file beside, which is then moved. What is no file, such as a terminal or a pipe, is
 * written to as it is.
 */
final class WholeFile {

	private WholeFile() {
	}

	/**
	 * Refuses a file that could never be written, before any work is done for it.
	 *
	 * @throws Refusal if it is a folder, or in none
	 */
	static void refuseHopeless(Path file) {
		try {
			expectPossible(file);
		} catch (IOException e) {
			throw refusal(file, e);
		}
	}

	/**
	 * Writes a text into a file.
	 *
	 * @throws Refusal if it cannot be written; what was there is as it was
	 */
	static void writeOrRefuse(Path file, String text) {
		writeOrRefuse(file, text.getBytes(StandardCharsets.UTF_8));
	}

	/**
	 * Writes a file.
	 *
	 * @throws Refusal if it cannot be written; what was there is as it was
	 */
	static void writeOrRefuse(Path file, byte[] content) {
		try {
			write(file, content);
		} catch (IOException e) {
			throw refusal(file, e);
		}
	}

	private static Refusal refusal(Path file, IOException failure) {
		String reason = failure instanceof FileSystemException known && known.getReason() != null ? known.getReason()
				: failure instanceof AccessDeniedException ? "permission denied" : failure.getMessage();
		return new Refusal(file + " cannot be written: " + reason);
	}

	/**
	 * Writes a file, new or in place of what is there. Permissions stay, and a link leads where it led.
	 *
	 * @throws IOException if it cannot be written; what was there is as it was
	 */
	static void write(Path file, byte[] content) throws IOException {
		expectPossible(file);
		Path target = file.toAbsolutePath();
		if (Files.exists(file)) {
			try {
				target = file.toRealPath();
			} catch (NoSuchFileException e) {
				// a link to something without a path of its own, as standard output is when it is a pipe
				Files.write(file, content);
				return;
			}
			if (!Files.isRegularFile(target)) {
				Files.write(target, content);
				return;
			}
			if (!Files.isWritable(target)) {
				throw new FileSystemException(file.toString(), null, "the file is protected from writing");
			}
		}
		replace(target, content);
	}

	private static void replace(Path target, byte[] content) throws IOException {
		Path written = target.resolveSibling("." + target.getFileName() + "." + ProcessHandle.current().pid() + ".new");
		try {
			if (Files.exists(target)) {
				// copied first, so that it has the permissions and, where that is allowed, the owner of the file
				Files.copy(target, written, StandardCopyOption.COPY_ATTRIBUTES);
				Files.write(written, content);
			} else {
				Files.write(written, content, StandardOpenOption.CREATE_NEW);
			}
			try {
				Files.move(written, target, StandardCopyOption.ATOMIC_MOVE);
			} catch (AtomicMoveNotSupportedException e) {
				Files.move(written, target, StandardCopyOption.REPLACE_EXISTING);
			}
		} finally {
			Files.deleteIfExists(written);
		}
	}

	private static void expectPossible(Path file) throws IOException {
		if (Files.isDirectory(file)) {
			throw new FileSystemException(file.toString(), null, "it is a folder");
		}
		Path folder = file.toAbsolutePath().getParent();
		if (!Files.isDirectory(folder)) {
			throw new FileSystemException(file.toString(), null, "there is no folder " + folder);
		}
	}
}
