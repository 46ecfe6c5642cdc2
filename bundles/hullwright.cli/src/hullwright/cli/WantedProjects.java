/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Parameters;

/**
 * The files and folders that a command is about.
 */
final class WantedProjects {

	@Parameters(paramLabel = "PATH", description = "Files or folders; without any, the current folder. A project is the "
			+ "folder, or the nearest one above it that holds a profile.")
	private List<String> paths = new ArrayList<>();

	/** The projects that hold them. */
	List<Project> all() {
		return Project.of(paths.isEmpty() ? List.of(".") : paths, Path.of(""));
	}

	/** Whether any were named, rather than the current folder taken. */
	boolean areNamed() {
		return !paths.isEmpty();
	}
}
