/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import java.util.Map;

/**
 * Where a project lies and what its files hold, for reports that lead to places in the text.
 *
 * @param below the path that leads to the project from the root of the repository, with '/' between folders; empty for the root
 * @param texts the texts that were checked, by the path of their file in the project, with whatever byte order mark they have
 */
public record ProjectSources(String below, Map<String, String> texts) {

	public ProjectSources {
		texts = Map.copyOf(texts);
	}

	/** The path of a file of the project from the root of the repository. */
	String pathOf(String file) {
		return below.isEmpty() ? file : below + "/" + file;
	}
}
