/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * The checksums that a user trusts. They are kept outside of all projects, so that no project can bring its own trust along: one line
 * for each, the checksum first, then for people what it was and since when.
 */
public final class TrustedPlugins {

	/** The folder of the user's configuration, if it is to be another; an environment variable does the same. */
	public static final String PROPERTY = "hullwright.configuration";

	private static final String VARIABLE = "HULLWRIGHT_CONFIGURATION";

	/** Two threads of one process cannot hold the lock of a file, so they take turns before it. */
	private static final Object CHANGING = new Object();

	private final Path folder;

	/** The trust that is kept in a folder. */
	public TrustedPlugins(Path folder) {
		this.folder = folder;
	}

	/** The trust of the user who runs this. */
	public static TrustedPlugins ofUser() {
		String named = System.getProperty(PROPERTY, System.getenv(VARIABLE));
		String common = System.getenv("XDG_CONFIG_HOME");
		return new TrustedPlugins(named != null ? Path.of(named)
				: (common != null && !common.isBlank() ? Path.of(common) : Path.of(System.getProperty("user.home"), ".config")).resolve("hullwright"));
	}

	/** The folder whose jars are looked at for every project. */
	public Path rulesOfUser() {
		return folder.resolve(PluginFile.FOLDER);
	}

	/** The jars that are looked at for every project. */
	public List<PluginFile> pluginsOfUser() {
		return PluginFile.ofUser(rulesOfUser());
	}

	/** The file with the checksums. */
	public Path file() {
		return folder.resolve("trusted-plugins");
	}

	/** The checksums that are trusted; none if there is no such file. */
	public List<String> checksums() throws IOException {
		return lines().stream().map(TrustedPlugins::checksumOf).filter(TrustedPlugins::isChecksum).toList();
	}

	/** Whether a text is a SHA-256 as it stands in the list. */
	public static boolean isChecksum(String text) {
		return text.matches("[0-9a-f]{64}");
	}

	private static String checksumOf(String line) {
		return line.strip().split("\\s+")[0];
	}

	/** Trusts a plugin. */
	public void trust(HousePlugin plugin, LocalDate today) throws IOException {
		change(lines -> {
			lines.removeIf(line -> checksumOf(line).equals(plugin.sha256()));
			lines.add(plugin.sha256() + "  " + plugin.title().replaceAll("\\s+", " ") + ", since " + today);
		});
	}

	/** Trusts jars with a checksum no longer. */
	public void distrust(String checksum) throws IOException {
		if (Files.exists(file())) {
			change(lines -> lines.removeIf(line -> checksumOf(line).equals(checksum)));
		}
	}

	/** One change after the other, in this process and in others: a list that two write at once would lose one of their lines. */
	private void change(Consumer<List<String>> change) throws IOException {
		Files.createDirectories(folder);
		synchronized (CHANGING) {
			try (FileChannel channel = FileChannel.open(folder.resolve("trusted-plugins.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
					FileLock held = channel.lock()) {
				List<String> lines = new ArrayList<>(lines());
				change.accept(lines);
				write(lines);
			}
		}
	}

	private List<String> lines() throws IOException {
		try {
			return Files.readAllLines(file(), StandardCharsets.UTF_8);
		} catch (NoSuchFileException e) {
			return List.of();
		}
	}

	private void write(List<String> lines) throws IOException {
		Path written = Files.createTempFile(folder, "trusted", ".new");
		try {
			Files.write(written, lines, StandardCharsets.UTF_8);
			try {
				Files.move(written, file(), StandardCopyOption.ATOMIC_MOVE);
			} catch (AtomicMoveNotSupportedException e) {
				Files.move(written, file(), StandardCopyOption.REPLACE_EXISTING);
			}
		} finally {
			Files.deleteIfExists(written);
		}
	}
}
