/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The folder from which a code host counts paths: the nearest one with a repository in it; without one, the folder in which the
 * command was given, if the project is below it, else that of the project.
 */
final class RepositoryRoot {

	private RepositoryRoot() {
	}

	/** The path from the root to a folder, with '/' between folders; empty for the root itself. */
	static String pathTo(Path given, Path workingFolder) {
		Path folder = workingFolder.resolve(given).toAbsolutePath().normalize();
		Path working = workingFolder.toAbsolutePath().normalize();
		Path root = folder;
		while (root != null && !Files.exists(root.resolve(".git"))) {
			root = root.getParent();
		}
		if (root == null) {
			root = folder.startsWith(working) ? working : folder;
		}
		return root.relativize(folder).toString().replace('\\', '/');
	}
}
