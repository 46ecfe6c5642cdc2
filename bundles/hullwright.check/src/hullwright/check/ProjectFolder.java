/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds the project that a file belongs to.
 */
public final class ProjectFolder {

	private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);
	private static final Pattern PROFILE = Pattern.compile("(?:^|\\s)profile\\s+[\\p{L}_]");

	private ProjectFolder() {
	}

	/** The nearest folder from here upwards that holds a profile, or the folder itself if none does. */
	public static Path of(Path folder) {
		return of(folder, folder);
	}

	/** The nearest folder from here upwards that holds a profile, or the one that was given if none does. */
	public static Path of(Path folder, Path given) {
		for (Path each = folder.toAbsolutePath().normalize(); each != null; each = each.getParent()) {
			if (holdsProfile(each)) {
				return each;
			}
		}
		return given.toAbsolutePath().normalize();
	}

	/**
	 * The projects that lie in or below a folder: the one that the folder belongs to, and each folder below it that holds a
	 * profile of its own.
	 *
	 * @throws IOException if the folder cannot be read
	 */
	public static List<Path> within(Path folder) throws IOException {
		List<Path> projects = new ArrayList<>();
		projects.add(of(folder));
		Files.walkFileTree(folder.toAbsolutePath().normalize(), Set.of(), Snapshot.DEEPEST_FOLDER, new SimpleFileVisitor<>() {
			@Override
			public FileVisitResult preVisitDirectory(Path each, BasicFileAttributes attributes) {
				if (Snapshot.isPassedOver(each) && !each.equals(folder)) {
					return FileVisitResult.SKIP_SUBTREE;
				}
				if (!projects.contains(each) && holdsProfile(each)) {
					projects.add(each);
				}
				return FileVisitResult.CONTINUE;
			}

			@Override
			public FileVisitResult visitFileFailed(Path file, IOException failure) {
				return FileVisitResult.CONTINUE;
			}
		});
		projects.sort(null);
		return projects;
	}

	static boolean holdsProfile(Path folder) {
		try (Stream<Path> files = Files.list(folder)) {
			return files.anyMatch(file -> file.getFileName().toString().endsWith(".hull") && declaresProfile(file));
		} catch (IOException | SecurityException e) {
			return false;
		}
	}

	/** A look at the words is enough here: whether the profile is well-formed is for the check to say. */
	private static boolean declaresProfile(Path file) {
		try {
			if (!Files.isRegularFile(file) || Files.size(file) > Snapshot.LARGEST_FILE) {
				return false;
			}
			String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
			return PROFILE.matcher(COMMENT.matcher(text).replaceAll(" ")).find();
		} catch (IOException e) {
			return false;
		}
	}
}
