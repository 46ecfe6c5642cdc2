/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.lang.HullLanguage;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.network.Origin;
import hullwright.spec.Catalog;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A catalog as its text describes it.
 *
 * @param file the file that it stands in, relative to the project
 * @param name its name
 * @param title what people call it, empty if nothing
 * @param names the names of its parts
 * @param families the names of the connector families that its parts can name
 * @param origin its place in the text
 */
public record CatalogInText(String file, String name, String title, Set<String> names, Set<String> families, Origin origin) {

	public CatalogInText {
		names = Set.copyOf(names);
		families = Set.copyOf(families);
	}

	/** The caller holds the lock that guards reading. */
	static List<CatalogInText> of(ReadProject project) {
		VisibleCatalogs visible = HullLanguage.services().getInstance(VisibleCatalogs.class);
		List<CatalogInText> catalogs = new ArrayList<>();
		project.files().forEach((path, file) -> file.getDeclarations().stream().filter(Catalog.class::isInstance).map(Catalog.class::cast)
				.filter(catalog -> catalog.getName() != null).forEach(catalog -> {
					Set<String> names = new TreeSet<>();
					catalog.getParts().stream().map(part -> part.getName()).filter(name -> name != null).forEach(names::add);
					Set<String> families = new TreeSet<>();
					visible.from(catalog).forEach(each -> each.getFamilies().stream().map(family -> family.getName()).filter(name -> name != null)
							.forEach(families::add));
					catalogs.add(new CatalogInText(path, catalog.getName(), catalog.getTitle() == null ? "" : catalog.getTitle(), names, families,
							new TextOrigins().of(catalog, catalog.getName())));
				}));
		return catalogs;
	}
}
