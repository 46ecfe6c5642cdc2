/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.check.plugin.PluginFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The .hull files of a project as they stand at one moment: on disk, in unsaved editors, or in any mixture. Imports are read
 * from here and nowhere else. Immutable.
 */
public final class Snapshot {

	/** Files above this size are refused with a finding, whoever sends them. */
	public static final int LARGEST_FILE = 5_000_000;

	/** How deep folders may nest below a project; deeper is a loop of links or no project. */
	static final int DEEPEST_FOLDER = 32;

	private final SortedMap<String, FileContent> files;
	private final List<PluginFile> plugins;

	private Snapshot(SortedMap<String, FileContent> files, List<PluginFile> plugins) {
		this.files = Collections.unmodifiableSortedMap(files);
		this.plugins = List.copyOf(plugins);
	}

	/**
	 * The bytes of a file, or why they could not be had.
	 *
	 * @param bytes the bytes, empty if they could not be read
	 * @param problem why they could not be read, in words
	 */
	public record FileContent(byte[] bytes, Optional<String> problem) {

		/** Whether the other holds the same bytes or has the same problem. */
		boolean isSameAs(FileContent other) {
			return Arrays.equals(bytes, other.bytes) && problem.equals(other.problem);
		}
	}

	/** A project of these texts, by their path relative to the project with '/' between folders. */
	public static Snapshot of(Map<String, String> texts) {
		SortedMap<String, FileContent> files = new TreeMap<>();
		texts.forEach((path, text) -> files.put(path, content(text)));
		return new Snapshot(files, List.of());
	}

	/**
	 * The files below a folder that end in .hull. Hidden folders, build output and folders that are projects of their own are
	 * passed over, links to folders are not followed. A file that cannot be read becomes a finding, not an exception.
	 *
	 * @throws IOException if the folder itself cannot be read
	 */
	public static Snapshot ofFolder(Path root) throws IOException {
		SortedMap<String, FileContent> files = new TreeMap<>();
		Files.walkFileTree(root, Set.of(), DEEPEST_FOLDER, new SimpleFileVisitor<>() {
			@Override
			public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
				boolean passOver = isPassedOver(folder) || ProjectFolder.holdsProfile(folder);
				return passOver && !folder.equals(root) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
			}

			@Override
			public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
				if (file.getFileName().toString().endsWith(".hull") && !attributes.isDirectory()) {
					files.put(relative(root, file), read(root, file));
				}
				return FileVisitResult.CONTINUE;
			}

			@Override
			public FileVisitResult visitFileFailed(Path file, IOException failure) throws IOException {
				if (file.equals(root)) {
					throw failure;
				}
				if (file.getFileName().toString().endsWith(".hull")) {
					files.put(relative(root, file), unreadable("cannot be read: " + failure.getMessage()));
				}
				return FileVisitResult.CONTINUE;
			}
		});
		return new Snapshot(files, PluginFile.ofProject(root));
	}

	/** Whether a folder is hidden or holds what a build made. */
	static boolean isPassedOver(Path folder) {
		String name = folder.getFileName() == null ? "" : folder.getFileName().toString();
		return name.startsWith(".") || name.equals("target") || name.equals("bin");
	}

	private static String relative(Path root, Path file) {
		return root.relativize(file).toString().replace('\\', '/');
	}

	private static FileContent read(Path root, Path file) {
		try {
			if (!file.toRealPath().startsWith(root.toRealPath())) {
				return unreadable("is a link to a place outside the project, which a spec may not read");
			}
			if (Files.size(file) > LARGEST_FILE) {
				return unreadable(tooLarge(Files.size(file)));
			}
			return new FileContent(Files.readAllBytes(file), Optional.empty());
		} catch (IOException e) {
			return unreadable("cannot be read: " + e.getMessage());
		}
	}

	private static FileContent unreadable(String why) {
		return new FileContent(new byte[0], Optional.of(why));
	}

	private static FileContent content(String text) {
		byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
		return bytes.length > LARGEST_FILE ? unreadable(tooLarge(bytes.length)) : new FileContent(bytes, Optional.empty());
	}

	private static String tooLarge(long bytes) {
		return "is too large: %.1f MB, and a .hull file may have %d MB".formatted(bytes / 1e6, LARGEST_FILE / 1_000_000);
	}

	/** The same project with another text in one file. */
	public Snapshot with(String path, String text) {
		SortedMap<String, FileContent> changed = new TreeMap<>(files);
		changed.put(path, content(text));
		return new Snapshot(changed, plugins);
	}

	/** The same texts with these jars as plugins of the project. */
	public Snapshot with(List<PluginFile> jars) {
		return new Snapshot(files, jars);
	}

	/** The jars with rules of the house, trusted or not. */
	public List<PluginFile> plugins() {
		return plugins;
	}

	/** The files by path, in order of path. */
	public SortedMap<String, FileContent> files() {
		return files;
	}

	/** The text of a file that could be read, with whatever byte order mark it has. */
	public Optional<String> text(String path) {
		return Optional.ofNullable(files.get(path))
				.filter(content -> content.problem().isEmpty())
				.map(content -> new String(content.bytes(), StandardCharsets.UTF_8));
	}
}
