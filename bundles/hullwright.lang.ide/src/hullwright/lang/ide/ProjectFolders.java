/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.check.ProjectFolder;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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

	/** Every project folder with .hull files below a given folder. */
	Set<Path> below(Path folder) throws IOException {
		Set<Path> projects = new TreeSet<>();
		for (Path holder : foldersWithSpecs(folder)) {
			projects.add(ProjectFolder.of(holder, givenFolderOf(holder)));
		}
		return projects;
	}

	private static List<Path> foldersWithSpecs(Path top) throws IOException {
		List<Path> found = new ArrayList<>();
		Files.walkFileTree(top, new SimpleFileVisitor<>() {
			@Override
			public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
				boolean hidden = !folder.equals(top) && folder.getFileName().toString().startsWith(".");
				return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
			}

			@Override
			public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
				boolean spec = file.getFileName().toString().endsWith("." + EditorLanguage.FILE_EXTENSION);
				if (spec && (found.isEmpty() || !found.get(found.size() - 1).equals(file.getParent()))) {
					found.add(file.getParent());
				}
				return FileVisitResult.CONTINUE;
			}

			@Override
			public FileVisitResult visitFileFailed(Path file, IOException failure) throws IOException {
				if (file.equals(top)) {
					throw failure;
				}
				return FileVisitResult.CONTINUE;
			}
		});
		return found;
	}
}
