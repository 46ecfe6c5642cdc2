/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.messages;

import hullwright.lang.LanguageProblem;
import hullwright.quantity.QuantityFormatException;
import hullwright.quantity.QuantityFormatException.Reason;
import hullwright.spec.Series;
import hullwright.spec.WhenBlock;
import hullwright.spec.WhenElements;
import hullwright.spec.WhenItems;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import com.google.inject.Inject;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.IGrammarAccess;
import org.eclipse.xtext.Keyword;
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
	/** Words that are names, too, nearly everywhere: such a one was understood, and something before it went wrong. */
	private final Set<String> names;
	private final ExpectedWords expected;

	@Inject
	HullSyntaxMessages(IGrammarAccess grammar) {
		words = GrammarUtil.getAllKeywords(grammar.getGrammar());
		names = EcoreUtil2.getAllContentsOfType(GrammarUtil.findRuleForName(grammar.getGrammar(), "Name"), Keyword.class).stream()
				.map(Keyword::getValue)
				.collect(Collectors.toSet());
		expected = new ExpectedWords(grammar.getGrammar());
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
			return notUnderstood(noAlternative.group(1), context);
		}
		Matcher earlyExit = EARLY_EXIT.matcher(message);
		return earlyExit.matches() ? notUnderstood(earlyExit.group(1), context) : message;
	}

	private String expectedFound(String token, String found, EObject context) {
		// a series lists options and places by their names alone: a word that ends the list was meant as one of them
		boolean nameExpected = token.equals("RULE_ID") || token.equals("}") && context instanceof Series && !names.contains(found);
		String hint = nameExpected ? reservedWordHint(found) : "";
		return "expected " + tokenName(token) + ", found " + foundName(found)
				+ (hint.isEmpty() && token.equals("}") ? whatMayStand(found, context) : hint);
	}

	private String notUnderstood(String found, EObject context) {
		if (isEnd(found)) {
			return "the text ends too early; is a '}' missing?";
		}
		String hint = reservedWordHint(found);
		return foundName(found) + " is not expected here" + (hint.isEmpty() ? whatMayStand(found, context) : hint);
	}

	/** The word that was perhaps meant in the braces of the context, or all that may begin something there. */
	private String whatMayStand(String found, EObject context) {
		if (isEnd(found) || context == null) {
			return "";
		}
		if (found.equals("when") && isBlockOfConditions(context)) {
			return "; a block of conditions may hold one more, no deeper: join conditions by 'and'";
		}
		Set<String> beginnings = expected.beginningsIn(context.eClass());
		if (beginnings.contains(found)) {
			return "";
		}
		return NearestName.to(found, beginnings.stream()).map(near -> "; did you mean '" + near + "'?")
				.orElse(beginnings.isEmpty() ? "" : "; what stands here begins with " + String.join(", ", beginnings));
	}

	private static boolean isBlockOfConditions(EObject context) {
		return context instanceof WhenBlock || context instanceof WhenElements || context instanceof WhenItems;
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
		case "/" -> "'/' (the id of a rule is written as in 'cabling/drop-too-long')";
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
