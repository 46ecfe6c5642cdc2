/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.messages;

import hullwright.lang.grammar.Beginnings;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.EnumLiteralDeclaration;
import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.TerminalRule;

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

	private static void beginnings(AbstractElement element, Set<String> words, Set<AbstractRule> seen) {
		Beginnings.of(element, first -> {
			if (first instanceof Keyword keyword) {
				addWord(keyword, words);
			} else if (first instanceof EnumLiteralDeclaration literal) {
				addWord(literal.getLiteral(), words);
			} else if (first instanceof RuleCall call && !isDatatype(call.getRule()) && seen.add(call.getRule())) {
				beginnings(call.getRule().getAlternatives(), words, seen);
			}
		});
	}

	private static void addWord(Keyword keyword, Set<String> words) {
		if (Character.isLetter(keyword.getValue().charAt(0))) {
			words.add(keyword.getValue());
		}
	}

	private static boolean isDatatype(AbstractRule rule) {
		return rule instanceof TerminalRule || rule instanceof ParserRule parserRule && GrammarUtil.isDatatypeRule(parserRule);
	}
}
