/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.rules.Finding;
import hullwright.rules.report.SourceFile;
import hullwright.spec.SpecFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A project as it was read: the files that parsed, and what is wrong with the texts.
 *
 * @param files the spec of each file that could be parsed at all, by path
 * @param problems what is wrong with the texts
 * @param unsound the files with problems that keep the boats in them, and in files that import them, from being checked
 * @param sources the files that were read, built-in catalogs included
 */
record ReadProject(Map<String, SpecFile> files, List<Finding> problems, Set<String> unsound, List<SourceFile> sources) {

	/** The path of the file that a spec was read from, or empty for one that is not of this project. */
	Optional<String> pathOf(SpecFile file) {
		return files.entrySet().stream().filter(entry -> entry.getValue() == file).map(Map.Entry::getKey).findFirst();
	}
}
