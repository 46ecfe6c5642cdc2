/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import hullwright.spec.Named;
import hullwright.spec.PartType;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * All that a part is, without what it is called: two parts with the same signature are one part under two names.
 */
final class PartSignature {

	private static final Set<String> WHAT_IT_IS_CALLED = Set.of("name", "title", "source", "article", "successor");

	private PartSignature() {
	}

	static String of(PartType part) {
		return contents(part);
	}

	private static String contents(EObject element) {
		List<String> said = new ArrayList<>();
		for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
			if (element.eIsSet(feature) && !WHAT_IT_IS_CALLED.contains(feature.getName())) {
				said.add(feature.getName() + "=" + value(feature, element.eGet(feature)));
			}
		}
		return element.eClass().getName() + said;
	}

	private static String value(EStructuralFeature feature, Object value) {
		if (value instanceof Collection<?> several) {
			return several.stream().map(each -> value(feature, each)).toList().toString();
		} else if (feature instanceof EReference reference) {
			return reference.isContainment() ? contents((EObject) value) : ((Named) value).getName();
		}
		return String.valueOf(value);
	}
}
