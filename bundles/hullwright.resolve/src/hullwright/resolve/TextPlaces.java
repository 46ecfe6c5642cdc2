/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.Origin;
import org.eclipse.emf.ecore.EObject;

/**
 * Where an element of the spec stands in the text. The resolver asks; who parsed the text knows.
 */
@FunctionalInterface
public interface TextPlaces {

	/** The origin of an element under a qualified name: the place of its name, or of its first word if it has none. */
	Origin of(EObject element, String qualifiedName);
}
