/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.guards;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Finds the checkout that the tests run in.
 */
final class Repository {

	private Repository() {
	}

	/** The top folder: the one that holds both the bundles and the release engineering. */
	static Path root() {
		for (Path folder = Path.of("").toAbsolutePath(); folder != null; folder = folder.getParent()) {
			if (Files.isDirectory(folder.resolve("bundles")) && Files.isDirectory(folder.resolve("releng"))) {
				return folder;
			}
		}
		throw new IllegalStateException("the tests do not run inside a checkout");
	}
}
