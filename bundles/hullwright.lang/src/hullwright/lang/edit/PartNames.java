/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.lang.imports.VisibleCatalogs;
import hullwright.spec.Catalog;
import hullwright.spec.PartType;
import org.eclipse.emf.ecore.EObject;

/**
 * How a text names the parts of its catalogs.
 *
 * @param catalogs which catalogs a place can name
 */
public record PartNames(VisibleCatalogs catalogs) {

	/** The name of a part where an element stands: with its catalog if another visible catalog has a part of that name. */
	public String at(EObject element, String catalog, String part) {
		return catalogs.declaring(element, part).size() > 1 ? catalog + "." + part : part;
	}

	/** Whether a part of the spec is this one. */
	static boolean is(Object found, String catalog, String part) {
		return found instanceof PartType type && part.equals(type.getName()) && type.eContainer() instanceof Catalog home && catalog.equals(home.getName());
	}
}
