/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;

/**
 * One place in a text where a name stands. A reference that is written with its catalog or network holds two of them.
 *
 * @param offset   where it begins
 * @param text     the name as written
 * @param declares whether this is the declaration
 * @param meaning  what is meant, worked out when asked; null if that is unknown
 */
record NameUse(int offset, String text, boolean declares, Supplier<EObject> meaning) {

	int end() {
		return offset + text.length();
	}

	/** What is meant; null if that is unknown. */
	EObject meant() {
		EObject element = meaning.get();
		return element == null || element.eIsProxy() ? null : element;
	}
}
