/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import hullwright.check.OfferedPart;
import hullwright.check.Snapshot;
import hullwright.rules.HouseDemands;
import hullwright.workbench.live.ProjectText;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * The parts that a project can use, as they were read.
 *
 * @param text the project; empty where none is open, so that there are the built-in parts only
 * @param snapshot its texts
 * @param parts the parts
 * @param approved the catalogs that its profile approves, if it says so
 */
record Shelf(Optional<ProjectText> text, Snapshot snapshot, List<OfferedPart> parts, Optional<Set<String>> approved) {

	/** Reads a project in the background. */
	static CompletableFuture<Shelf> read(Optional<ProjectText> text) {
		return CompletableFuture.supplyAsync(() -> {
			try {
				Snapshot snapshot = text.isPresent() ? text.get().read() : Snapshot.of(Map.of());
				return new Shelf(text, snapshot, ProjectText.engine().texts().parts(snapshot),
						ProjectText.engine().inForce(snapshot).demands().approved().map(HouseDemands.ApprovedCatalogs::names));
			} catch (IOException e) {
				throw new CompletionException(e);
			}
		});
	}
}
