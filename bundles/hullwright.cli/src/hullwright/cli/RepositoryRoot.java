/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.report.ProjectReport;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The folder from which a code host counts paths: the nearest one with a repository in it, else that of the project.
 */
final class RepositoryRoot {

	private RepositoryRoot() {
	}

	/** By the folder of each project as its report names it, the path to it from the root. */
	static Map<String, String> pathsBelow(List<ProjectReport> reports) {
		Map<String, String> below = new HashMap<>();
		for (ProjectReport each : reports) {
			Path folder = Path.of(each.project()).toAbsolutePath().normalize();
			Path root = folder;
			while (root != null && !Files.exists(root.resolve(".git"))) {
				root = root.getParent();
			}
			below.put(each.project(), root == null ? "" : root.relativize(folder).toString().replace('\\', '/'));
		}
		return below;
	}
}
