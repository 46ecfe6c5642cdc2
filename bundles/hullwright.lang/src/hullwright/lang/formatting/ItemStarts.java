/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.formatting;

import hullwright.lang.grammar.Beginnings;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.Action;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.INode;

/**
 * Knows from the grammar where the items of a block begin, so that new words of the language need no line here.
 */
final class ItemStarts {

	private final Map<Keyword, Set<EObject>> startsByBlock = new HashMap<>();
	private final Set<EObject> startsInFile = new HashSet<>();

	ItemStarts(ParserRule file) {
		collectFirst(file.getAlternatives(), startsInFile);
	}

	/** The elements of the grammar with which an item of the file begins. */
	Set<EObject> inFile() {
		return startsInFile;
	}

	/** The elements of the grammar with which an item of the block begins that this brace opens. */
	Set<EObject> after(Keyword brace) {
		return startsByBlock.computeIfAbsent(brace, ItemStarts::firstAfter);
	}

	/** Whether a word of the text begins an item that begins with one of these elements. */
	static boolean begins(INode word, Set<EObject> starts) {
		for (INode each = word; each != null && each.getOffset() == word.getOffset(); each = each.getParent()) {
			if (starts.contains(each.getGrammarElement())) {
				return true;
			}
		}
		return false;
	}

	private static Set<EObject> firstAfter(Keyword brace) {
		Set<EObject> first = new HashSet<>();
		if (brace.eContainer() instanceof Group group) {
			List<AbstractElement> elements = group.getElements();
			int body = elements.indexOf(brace) + 1;
			if (body < elements.size()) {
				collectFirst(elements.get(body), first);
			}
		}
		return first;
	}

	private static void collectFirst(AbstractElement body, Set<EObject> first) {
		Beginnings.of(body, element -> {
			first.add(element);
			if (element instanceof CrossReference reference) {
				first.add(reference.getTerminal());
			} else if (element instanceof RuleCall call && call.getRule().getAlternatives() instanceof Group called
					&& called.getElements().get(0) instanceof Action action) {
				// where a rule begins by making its object, the node tells of that and not of the call
				first.add(action);
			}
		});
	}
}
