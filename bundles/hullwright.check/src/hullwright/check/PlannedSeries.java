/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.lang.HullLanguage;
import hullwright.lang.imports.Imports;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.resolve.SeriesPlan;
import hullwright.spec.Series;
import hullwright.spec.SpecFile;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The series that a request asks for, ready to build their boats, and why some are not. The caller holds the lock that guards
 * reading.
 *
 * @param plans the series
 * @param files the files whose problems matter to the request: those that it asks for, and what they import
 * @param gaps what of the request cannot be looked at, in words
 */
record PlannedSeries(List<SeriesPlan> plans, Set<String> files, List<String> gaps) {

	/**
	 * Plans what a request asks for.
	 *
	 * @param known plans of series whose text has not changed since; new ones are added
	 */
	static PlannedSeries of(ReadProject project, CheckRequest request, Map<Series, SeriesPlan> known) {
		PlannedSeries planned = new PlannedSeries(new ArrayList<>(),
				request.focus().isEmpty() ? request.snapshot().files().keySet() : withImports(project, request.focus()), new ArrayList<>());
		VisibleCatalogs catalogs = HullLanguage.services().getInstance(VisibleCatalogs.class);
		project.files().forEach((path, file) -> {
			if (!request.focus().isEmpty() && !request.focus().contains(path)) {
				return;
			}
			Optional<String> doubtful = doubtful(project, path, file);
			for (var declaration : file.getDeclarations()) {
				if (declaration instanceof Series series && doubtful.isEmpty()) {
					planned.plans.add(known.computeIfAbsent(series, each -> new SeriesPlan(each, catalogs.from(each), new TextOrigins())));
				}
			}
			doubtful.ifPresent(where -> planned.gaps.add(path + " was read no further because of "
					+ (where.equals(path) ? "its problems" : "the problems in " + where)));
		});
		project.unsound().stream().sorted()
				.filter(path -> !project.files().containsKey(path) && (request.focus().isEmpty() || request.focus().contains(path)))
				.forEach(path -> planned.gaps.add(path + " could not be read"));
		request.focus().stream().sorted().filter(path -> !request.snapshot().files().containsKey(path))
				.forEach(path -> planned.gaps.add("there is no file " + path));
		return planned;
	}

	/** The file whose problems leave in doubt what this one says: itself, or one that it imports. */
	private static Optional<String> doubtful(ReadProject project, String path, SpecFile file) {
		if (project.unsound().contains(path)) {
			return Optional.of(path);
		}
		return Imports.of(file).values().stream().flatMap(imported -> project.pathOf(imported).stream()).filter(project.unsound()::contains).findFirst();
	}

	private static Set<String> withImports(ReadProject project, Set<String> focus) {
		Set<String> paths = new LinkedHashSet<>();
		List<String> open = new ArrayList<>(focus);
		while (!open.isEmpty()) {
			String path = open.remove(open.size() - 1);
			if (paths.add(path) && project.files().containsKey(path)) {
				Imports.of(project.files().get(path)).values().forEach(imported -> project.pathOf(imported).ifPresent(open::add));
			}
		}
		return paths;
	}
}
