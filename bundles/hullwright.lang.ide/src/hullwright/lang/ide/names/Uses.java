/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.resource.XtextResource;

/**
 * All places where one thing is named, text by text.
 *
 * @param element what is named
 * @param byText  its places, in the order of the text; only texts that name it
 */
record Uses(EObject element, Map<XtextResource, List<NameUse>> byText) {

	/** The uses in these texts. */
	static Uses of(EObject element, List<XtextResource> texts) {
		String name = NamesInText.nameOf(element);
		Map<XtextResource, List<NameUse>> found = new LinkedHashMap<>();
		for (XtextResource text : texts) {
			List<NameUse> here = new ArrayList<>();
			for (NameUse use : new NamesInText(text).all()) {
				// resolving a reference is dear, so only those that are spelled like it
				if (use.text().equals(name) && ProjectTexts.same(use.meant(), element)) {
					here.add(use);
				}
			}
			if (!here.isEmpty()) {
				found.put(text, here);
			}
		}
		return new Uses(element, found);
	}
}
