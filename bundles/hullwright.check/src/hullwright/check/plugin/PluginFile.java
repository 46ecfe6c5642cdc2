/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A jar as it lies in a folder for plugins. What was read is what is hashed and what is run, so that a file which is exchanged in
 * between does not slip through.
 *
 * @param file where it is: relative to the project, or the whole path where it belongs to the user
 * @param bytes what it holds, empty if it could not be read
 * @param problem why it could not be read, in words
 */
public record PluginFile(String file, byte[] bytes, Optional<String> problem) {

	/** The folder for plugins, in a project and in the configuration of a user alike. */
	public static final String FOLDER = "rules";

	/** A jar with rules has kilobytes. */
	private static final int LARGEST = 20_000_000;

	/** The SHA-256 of its bytes, in hexadecimal. */
	public String sha256() {
		try {
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java has SHA-256", e);
		}
	}

	/** The jars in the folder of a project, in the order of their names. Links out of the project are not followed. */
	public static List<PluginFile> ofProject(Path project) {
		return in(project.resolve(FOLDER), FOLDER, Optional.of(project));
	}

	/** The jars in a folder of the user, in the order of their names. */
	static List<PluginFile> ofUser(Path folder) {
		return in(folder, shown(folder), Optional.empty());
	}

	/** One file, wherever it is. */
	public static PluginFile at(Path file) {
		return read(file, shown(file), Optional.empty());
	}

	private static String shown(Path file) {
		return file.toString().replace('\\', '/');
	}

	private static List<PluginFile> in(Path folder, String shown, Optional<Path> project) {
		if (!Files.isDirectory(folder)) {
			return List.of();
		}
		List<PluginFile> files = new ArrayList<>();
		try (Stream<Path> entries = Files.list(folder)) {
			entries.filter(each -> each.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".jar")).sorted()
					.forEach(each -> files.add(read(each, shown + "/" + each.getFileName(), project)));
		} catch (IOException e) {
			files.add(unreadable(shown, "the folder cannot be read: " + e.getMessage()));
		}
		return files;
	}

	private static PluginFile read(Path file, String shown, Optional<Path> project) {
		try {
			if (project.isPresent() && !file.toRealPath().startsWith(project.get().toRealPath())) {
				return unreadable(shown, "it is a link to a place outside the project");
			} else if (!Files.isRegularFile(file)) {
				return unreadable(shown, Files.exists(file) ? "it is no file" : "there is no such file");
			} else if (Files.size(file) > LARGEST) {
				return unreadable(shown, "it is too large: %.1f MB, and a plugin may have %d MB".formatted(Files.size(file) / 1e6, LARGEST / 1_000_000));
			}
			return new PluginFile(shown, Files.readAllBytes(file), Optional.empty());
		} catch (NoSuchFileException e) {
			return unreadable(shown, "there is no such file");
		} catch (FileSystemException e) {
			return unreadable(shown, "it cannot be read: " + (e.getReason() == null ? "access denied" : e.getReason()));
		} catch (IOException e) {
			return unreadable(shown, "it cannot be read: " + e.getMessage());
		}
	}

	private static PluginFile unreadable(String file, String why) {
		return new PluginFile(file, new byte[0], Optional.of(why));
	}
}
