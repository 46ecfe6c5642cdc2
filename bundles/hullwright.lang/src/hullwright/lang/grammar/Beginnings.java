/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.grammar;

import java.util.function.Consumer;

import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.Action;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Group;

/**
 * What an element of the grammar can begin with.
 */
public final class Beginnings {

	private Beginnings() {
	}

	/**
	 * Hands out the words and the calls of rules with which an element can begin; what a called rule begins with is asked of that
	 * rule.
	 *
	 * @return whether the element can be empty, so that what follows it can come first
	 */
	public static boolean of(AbstractElement element, Consumer<AbstractElement> first) {
		boolean optional = GrammarUtil.isOptionalCardinality(element);
		if (element instanceof Group group) {
			for (AbstractElement part : group.getElements()) {
				if (!of(part, first)) {
					return optional;
				}
			}
			return true;
		} else if (element instanceof Alternatives choice) {
			boolean oneIsEmpty = false;
			for (AbstractElement one : choice.getElements()) {
				oneIsEmpty |= of(one, first);
			}
			return oneIsEmpty || optional;
		} else if (element instanceof Assignment assignment) {
			return of(assignment.getTerminal(), first) || optional;
		} else if (element instanceof Action) {
			return true;
		}
		first.accept(element);
		return optional;
	}
}
