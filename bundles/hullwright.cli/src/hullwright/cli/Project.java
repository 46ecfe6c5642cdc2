/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.ProjectFolder;
import hullwright.check.Snapshot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A project on disk, and which of its files are of interest.
 *
 * @param folder the folder as it is shown, relative to where the command was given where that is shorter
 * @param snapshot its files
 * @param focus the files of interest, empty for all
 */
record Project(String folder, Snapshot snapshot, Set<String> focus) {

	/** The projects that the given files and folders belong to, in the order in which they are first named. */
	static List<Project> of(List<String> paths, Path workingFolder) {
		Map<Path, Set<Path>> wanted = new LinkedHashMap<>();
		for (String path : paths) {
			Path given = existing(path, workingFolder);
			Path root = ProjectFolder.of(Files.isDirectory(given) ? given : given.getParent());
			wanted.computeIfAbsent(root, each -> new LinkedHashSet<>()).add(given);
		}
		return wanted.entrySet().stream().map(entry -> read(entry.getKey(), entry.getValue(), workingFolder)).toList();
	}

	private static Path existing(String path, Path workingFolder) {
		try {
			Path given = workingFolder.resolve(path).toAbsolutePath().normalize();
			if (!Files.exists(given)) {
				throw new Refusal("there is no file or folder " + path);
			}
			if (!Files.isDirectory(given) && !path.endsWith(".hull")) {
				throw new Refusal(path + " is no .hull file");
			}
			return given;
		} catch (InvalidPathException e) {
			throw new Refusal("'" + path + "' is no path: " + e.getMessage());
		}
	}

	private static Project read(Path root, Set<Path> wanted, Path workingFolder) {
		try {
			Snapshot snapshot = Snapshot.ofFolder(root);
			Set<String> focus = new LinkedHashSet<>();
			for (Path each : wanted) {
				if (each.equals(root)) {
					focus.addAll(snapshot.files().keySet());
				} else {
					String prefix = root.relativize(each).toString().replace('\\', '/');
					snapshot.files().keySet().stream().filter(file -> file.equals(prefix) || file.startsWith(prefix + "/")).forEach(focus::add);
				}
			}
			if (focus.isEmpty()) {
				throw new Refusal("there are no .hull files in " + shown(wanted.iterator().next(), workingFolder));
			}
			return new Project(shown(root, workingFolder), snapshot, focus.size() == snapshot.files().size() ? Set.of() : focus);
		} catch (IOException e) {
			throw new Refusal("the folder " + shown(root, workingFolder) + " cannot be read: " + e.getMessage());
		}
	}

	private static String shown(Path folder, Path workingFolder) {
		Path from = workingFolder.toAbsolutePath().normalize();
		String relative = from.getRoot().equals(folder.getRoot()) ? from.relativize(folder).toString() : folder.toString();
		return (relative.length() <= folder.toString().length() ? relative : folder.toString()).replace('\\', '/');
	}
}
