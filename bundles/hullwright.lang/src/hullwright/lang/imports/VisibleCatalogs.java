/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.imports;

import com.google.inject.Singleton;
import hullwright.spec.Catalog;
import hullwright.spec.SpecFile;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;

/**
 * The catalogs whose parts a place in a text may name: those of its own file and of the files it imports. Imports are not
 * passed on, so that a file says itself where its parts come from.
 */
@Singleton
public class VisibleCatalogs {

	/** The catalogs that are visible from an element, its own file's first. */
	public List<Catalog> from(EObject element) {
		SpecFile file = EcoreUtil2.getContainerOfType(element, SpecFile.class);
		if (file == null) {
			return List.of();
		}
		Set<SpecFile> files = new LinkedHashSet<>();
		files.add(file);
		files.addAll(Imports.of(file).values());
		List<Catalog> catalogs = new ArrayList<>();
		for (SpecFile each : files) {
			each.getDeclarations().stream().filter(Catalog.class::isInstance).map(Catalog.class::cast).forEach(catalogs::add);
		}
		return catalogs;
	}

	/** The visible catalogs that declare a part or a family with this simple name. */
	public List<Catalog> declaring(EObject element, String name) {
		return from(element).stream()
				.filter(catalog -> catalog.getParts().stream().anyMatch(part -> name.equals(part.getName()))
						|| catalog.getFamilies().stream().anyMatch(family -> name.equals(family.getName())))
				.toList();
	}
}
