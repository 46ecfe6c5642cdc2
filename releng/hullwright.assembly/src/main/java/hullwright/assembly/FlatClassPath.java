/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes the class path that the command line starts with: unsigned copies of exactly the jars that it needs, and a file
 * {@code class-path} that lists them, one a line; {@code originals} lists the jars that were copied.
 */
public final class FlatClassPath {

	/** Old copies stay this long, for programs that are still running on them. */
	private static final Duration GRACE = Duration.ofDays(1);

	private FlatClassPath() {
	}

	/**
	 * @param arguments the root of the source tree, the local Maven repository, the main bundle, the folder to write to
	 */
	public static void main(String[] arguments) throws IOException {
		Path root = Path.of(arguments[0]);
		Path repository = Path.of(arguments[1]);
		Path folder = Path.of(arguments[3]);
		List<Bundle> needed = new BundleClosure(allBundles(root, repository)).of(arguments[2]);
		Path jars = Files.createDirectories(folder.resolve("jars"));
		List<String> classPath = new ArrayList<>();
		for (Bundle bundle : needed) {
			classPath.add(UnsignedCopy.of(bundle.jar(), bundle.name(), jars).getFileName().toString());
		}
		replace(folder.resolve("originals"), needed.stream().map(bundle -> bundle.jar().toString()).toList());
		replace(folder.resolve("class-path"), classPath);
		removeOld(jars, classPath);
	}

	static List<Bundle> allBundles(Path root, Path repository) throws IOException {
		List<Bundle> bundles = new ArrayList<>();
		TargetFile target = TargetFile.of(root);
		for (Artifact artifact : target.artifacts()) {
			Path jar = artifact.jarIn(repository);
			// The target is for several platforms; what was not fetched is missed when something needs it.
			if (Files.exists(jar)) {
				bundles.add(Bundle.read(jar, target.wrappedName(artifact)));
			}
		}
		try (DirectoryStream<Path> own = Files.newDirectoryStream(root.resolve("bundles"), "hullwright.*")) {
			for (Path bundle : own) {
				Path jar = bundle.resolve("target/" + bundle.getFileName() + "-0.1.0-SNAPSHOT.jar");
				if (Files.exists(jar)) {
					bundles.add(Bundle.read(jar, Optional.empty()));
				}
			}
		}
		return bundles;
	}

	private static void replace(Path file, List<String> lines) throws IOException {
		Path unfinished = Files.createTempFile(file.getParent(), "class-path", ".part");
		Files.write(unfinished, lines);
		Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
	}

	private static void removeOld(Path jars, List<String> classPath) throws IOException {
		FileTime limit = FileTime.from(Instant.now().minus(GRACE));
		try (var files = Files.list(jars)) {
			files.filter(jar -> !classPath.contains(jar.getFileName().toString())).forEach(jar -> {
				try {
					if (Files.getLastModifiedTime(jar).compareTo(limit) < 0) {
						Files.delete(jar);
					}
				} catch (IOException e) {
					throw new UncheckedIOException(e);
				}
			});
		}
	}
}
