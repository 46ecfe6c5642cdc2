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
 * @param focus the files of interest
 */
record Project(String folder, Snapshot snapshot, Set<String> focus) {

	/** The projects that the given files and folders belong to, in the order in which they are first named. */
	static List<Project> of(List<String> paths, Path workingFolder) {
		Map<String, Project> projects = new LinkedHashMap<>();
		for (String path : paths) {
			Path given = existing(path, workingFolder);
			List<Project> found = Files.isDirectory(given) ? within(given, workingFolder) : List.of(read(ProjectFolder.of(given.getParent()), given, workingFolder));
			if (found.stream().allMatch(project -> project.focus().isEmpty())) {
				throw new Refusal("there are no .hull files in " + path);
			}
			found.stream().filter(project -> !project.focus().isEmpty()).forEach(project -> projects.merge(project.folder(), project, Project::and));
		}
		return List.copyOf(projects.values());
	}

	private static List<Project> within(Path folder, Path workingFolder) {
		try {
			return ProjectFolder.within(folder).stream().map(root -> read(root, folder.startsWith(root) ? folder : root, workingFolder)).toList();
		} catch (IOException e) {
			throw unreadable(folder, workingFolder, e);
		}
	}

	/** The path of a file of the project as it is shown, which leads to it from where the command was given. */
	String pathOf(String file) {
		return folder.isEmpty() ? file : folder + "/" + file;
	}

	private Project and(Project other) {
		Set<String> both = new LinkedHashSet<>(focus);
		both.addAll(other.focus);
		return new Project(folder, snapshot, both);
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

	private static Project read(Path root, Path wanted, Path workingFolder) {
		try {
			Snapshot snapshot = Snapshot.ofFolder(root);
			String prefix = root.relativize(wanted).toString().replace('\\', '/');
			Set<String> focus = new LinkedHashSet<>(snapshot.files().keySet());
			focus.removeIf(file -> !prefix.isEmpty() && !file.equals(prefix) && !file.startsWith(prefix + "/"));
			return new Project(shown(root, workingFolder), snapshot, focus);
		} catch (IOException e) {
			throw unreadable(root, workingFolder, e);
		}
	}

	private static Refusal unreadable(Path folder, Path workingFolder, IOException failure) {
		return new Refusal("the folder " + shown(folder, workingFolder) + " cannot be read: " + failure.getMessage());
	}

	private static String shown(Path folder, Path workingFolder) {
		Path from = workingFolder.toAbsolutePath().normalize();
		String relative = from.getRoot().equals(folder.getRoot()) ? from.relativize(folder).toString() : folder.toString();
		return (relative.length() <= folder.toString().length() ? relative : folder.toString()).replace('\\', '/');
	}
}
