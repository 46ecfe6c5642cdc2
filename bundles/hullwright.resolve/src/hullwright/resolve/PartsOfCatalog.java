/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.Origin;
import hullwright.network.part.Part;
import hullwright.spec.Catalog;
import hullwright.spec.PartType;
import java.util.ArrayList;
import java.util.List;

/**
 * The parts of catalogs as records, whether any series names them or not.
 */
public final class PartsOfCatalog {

	private PartsOfCatalog() {
	}

	/** A part with its place in the text. */
	public record Placed(Part part, Origin origin) {
	}

	/** The parts of a catalog, in the order of the text. The caller holds the lock that guards the spec. */
	public static List<Placed> of(Catalog catalog, TextPlaces places) {
		CatalogParts parts = new CatalogParts();
		List<Placed> found = new ArrayList<>();
		for (PartType type : catalog.getParts()) {
			if (type.getName() != null) {
				parts.of(type).ifPresent(part -> found.add(new Placed(part, places.of(type, catalog.getName() + "." + type.getName()))));
			}
		}
		return found;
	}
}
