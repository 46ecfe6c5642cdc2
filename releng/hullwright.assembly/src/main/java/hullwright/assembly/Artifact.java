/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import java.nio.file.Path;

/**
 * A file of Maven Central.
 */
public record Artifact(String groupId, String artifactId, String version) {

	/** Where a local repository keeps the jar. */
	public Path jarIn(Path repository) {
		return fileIn(repository, "jar");
	}

	/** Where a local repository keeps the pom. */
	public Path pomIn(Path repository) {
		return fileIn(repository, "pom");
	}

	private Path fileIn(Path repository, String type) {
		return repository.resolve(groupId.replace('.', '/')).resolve(artifactId).resolve(version)
				.resolve(artifactId + "-" + version + "." + type);
	}

	@Override
	public String toString() {
		return groupId + ":" + artifactId + ":" + version;
	}
}
