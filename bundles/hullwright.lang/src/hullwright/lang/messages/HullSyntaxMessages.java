/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.messages;

import hullwright.lang.LanguageProblem;
import hullwright.quantity.QuantityFormatException;
import hullwright.quantity.QuantityFormatException.Reason;
import hullwright.spec.Series;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import com.google.inject.Inject;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.IGrammarAccess;
import org.eclipse.xtext.nodemodel.SyntaxErrorMessage;
import org.eclipse.xtext.parser.antlr.SyntaxErrorMessageProvider;

/**
 * Says what was expected and what was found, in words that need no knowledge of parsers.
 */
public class HullSyntaxMessages extends SyntaxErrorMessageProvider {

	private static final Pattern MISMATCHED = Pattern.compile("(?:mismatched|extraneous) input '?(.*?)'? expecting '?(.*?)'?");
	private static final Pattern OPEN_TEXT = Pattern.compile("mismatched character '.*' expecting '\"'", Pattern.DOTALL);
	private static final Pattern MISSING = Pattern.compile("missing '?(.*?)'? at '?(.*?)'?");
	private static final Pattern NO_ALTERNATIVE = Pattern.compile("no viable alternative at (?:input|character) '?(.*?)'?", Pattern.DOTALL);
	private static final Pattern EARLY_EXIT = Pattern.compile("required \\(\\.\\.\\.\\)\\+ loop did not match anything at input '?(.*?)'?");

	private final Set<String> words;

	@Inject
	HullSyntaxMessages(IGrammarAccess grammar) {
		words = GrammarUtil.getAllKeywords(grammar.getGrammar());
	}

	@Override
	public SyntaxErrorMessage getSyntaxErrorMessage(IValueConverterErrorContext context) {
		if (context.getValueConverterException().getCause() instanceof QuantityFormatException e) {
			String id = e.reason() == Reason.UNIT_MISSING ? LanguageProblem.UNIT_MISSING : LanguageProblem.QUANTITY_WRONG;
			return new SyntaxErrorMessage(e.getMessage(), id, new String[] { e.proposal() });
		}
		return new SyntaxErrorMessage(context.getValueConverterException().getMessage(), LanguageProblem.NOT_UNDERSTOOD);
	}

	@Override
	public SyntaxErrorMessage getSyntaxErrorMessage(IParserErrorContext context) {
		return new SyntaxErrorMessage(inPlainWords(context.getDefaultMessage(), context.getCurrentContext()), LanguageProblem.NOT_UNDERSTOOD);
	}

	private String inPlainWords(String message, EObject context) {
		if (OPEN_TEXT.matcher(message).matches()) {
			return "the text in quotes is not closed in its line";
		}
		Matcher mismatched = MISMATCHED.matcher(message);
		if (mismatched.matches()) {
			return expectedFound(mismatched.group(2), mismatched.group(1), context);
		}
		Matcher missing = MISSING.matcher(message);
		if (missing.matches()) {
			return expectedFound(missing.group(1), missing.group(2), context);
		}
		Matcher noAlternative = NO_ALTERNATIVE.matcher(message);
		if (noAlternative.matches()) {
			return notUnderstood(noAlternative.group(1));
		}
		Matcher earlyExit = EARLY_EXIT.matcher(message);
		return earlyExit.matches() ? notUnderstood(earlyExit.group(1)) : message;
	}

	private String expectedFound(String expected, String found, EObject context) {
		// a series lists options and places by their names alone: a word that ends the list was meant as one of them
		boolean nameExpected = expected.equals("RULE_ID") || expected.equals("}") && context instanceof Series;
		return "expected " + tokenName(expected) + ", found " + foundName(found)
				+ (nameExpected ? reservedWordHint(found) : "");
	}

	private String notUnderstood(String found) {
		return isEnd(found) ? "the text ends too early; is a '}' missing?" : foundName(found) + " is not expected here" + reservedWordHint(found);
	}

	private String reservedWordHint(String found) {
		boolean word = words.contains(found) && Character.isLetter(found.charAt(0));
		return word ? " ('" + found + "' is a word of the language; if a name was meant, choose another)" : "";
	}

	private static String tokenName(String token) {
		return switch (token) {
		case "RULE_ID" -> "a name";
		case "RULE_INT" -> "a number";
		case "RULE_STRING" -> "a text in quotes";
		case "EOF", "<EOF>" -> "the end of the file or another catalog, series or profile";
		// only the id of a rule has one
		case "/" -> "'/' (the id of a rule is written as in 'cabling/drop-length')";
		default -> "'" + token + "'";
		};
	}

	private static String foundName(String token) {
		if (isEnd(token)) {
			return "the end of the file";
		}
		return token.isBlank() ? "a blank" : "'" + token + "'";
	}

	private static boolean isEnd(String token) {
		return token.equals("<EOF>") || token.equals("EOF");
	}
}
