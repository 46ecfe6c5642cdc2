/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.check.ProjectFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which project a file belongs to: the nearest folder upwards that holds a profile, else the folder that the client gave.
 */
final class ProjectFolders {

	private final Set<Path> given = new TreeSet<>();

	synchronized void add(Path folder) {
		given.add(folder);
	}

	synchronized void remove(Path folder) {
		given.remove(folder);
	}

	/** The project folder of a file; the file itself need not exist. */
	Path of(Path file) {
		Path parent = file.getParent();
		return ProjectFolder.of(parent, givenFolderOf(parent));
	}

	private synchronized Path givenFolderOf(Path parent) {
		return given.stream().filter(parent::startsWith).max(Comparator.comparingInt(Path::getNameCount)).orElse(parent);
	}

	/** Every project in or below a given folder. */
	Set<Path> below(Path folder) throws IOException {
		return new TreeSet<>(ProjectFolder.within(folder));
	}
}
