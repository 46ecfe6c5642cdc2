/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Origin;
import hullwright.rules.report.SourceFile;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Whether a place is in one of the texts that are checked, which every place of a network is. A rule that tells of another has
 * made it up.
 */
final class KnownPlaces implements Predicate<Origin> {

	private final Snapshot snapshot;
	private final Set<String> files;
	private final Map<String, Integer> lengths = new HashMap<>();

	KnownPlaces(Snapshot snapshot, ReadProject project) {
		this.snapshot = snapshot;
		files = project.sources().stream().map(SourceFile::file).collect(Collectors.toSet());
	}

	@Override
	public synchronized boolean test(Origin origin) {
		boolean inside = origin.offset() >= 0 && origin.length() >= 0;
		return inside && files.contains(origin.file()) && origin.offset() + origin.length() <= lengths.computeIfAbsent(origin.file(),
				file -> snapshot.text(file).map(String::length).orElse(Integer.MAX_VALUE / 2));
	}
}
