/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.messages;

import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Action;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.EnumLiteralDeclaration;
import org.eclipse.xtext.EnumRule;
import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;

/**
 * The words that the grammar knows where a thing is described.
 */
final class ExpectedWords {

	private final Grammar grammar;

	ExpectedWords(Grammar grammar) {
		this.grammar = grammar;
	}

	/** The words with which what stands in the braces of such a thing may begin, in the order of the alphabet. */
	Set<String> beginningsIn(EClass thing) {
		Set<String> words = new TreeSet<>();
		for (AbstractRule rule : GrammarUtil.allRules(grammar)) {
			if (rule instanceof ParserRule && rule.getType() != null && rule.getType().getClassifier() == thing
					&& rule.getAlternatives() instanceof Group group) {
				boolean inBraces = false;
				for (AbstractElement part : group.getElements()) {
					if (inBraces && GrammarUtil.isMultipleCardinality(part)) {
						beginnings(part, words, new HashSet<>());
					}
					inBraces = part instanceof Keyword keyword && keyword.getValue().equals("{");
				}
			}
		}
		return words;
	}

	/** Collects the first words of an element; tells whether the element may be empty. */
	private static boolean beginnings(AbstractElement element, Set<String> words, Set<AbstractRule> seen) {
		boolean optional = GrammarUtil.isOptionalCardinality(element);
		if (element instanceof Keyword keyword) {
			if (Character.isLetter(keyword.getValue().charAt(0))) {
				words.add(keyword.getValue());
			}
			return optional;
		} else if (element instanceof Assignment assignment) {
			return beginnings(assignment.getTerminal(), words, seen) || optional;
		} else if (element instanceof Alternatives choice) {
			boolean empty = false;
			for (AbstractElement one : choice.getElements()) {
				empty |= beginnings(one, words, seen);
			}
			return empty || optional;
		} else if (element instanceof Group group) {
			boolean empty = true;
			for (AbstractElement part : group.getElements()) {
				empty = empty && beginnings(part, words, seen);
			}
			return empty || optional;
		} else if (element instanceof RuleCall call && call.getRule() instanceof ParserRule rule && !GrammarUtil.isDatatypeRule(rule)) {
			return seen.add(rule) && beginnings(rule.getAlternatives(), words, seen) || optional;
		} else if (element instanceof RuleCall call && call.getRule() instanceof EnumRule rule) {
			return beginnings(rule.getAlternatives(), words, seen) || optional;
		}
		if (element instanceof EnumLiteralDeclaration literal) {
			return beginnings(literal.getLiteral(), words, seen);
		}
		return element instanceof Action || optional;
	}
}
