/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.rules.IToken;
import org.eclipse.jface.text.rules.ITokenScanner;
import org.eclipse.jface.text.rules.Token;

/**
 * Finds words of the language, numbers with their units, and names that are being declared, in text outside comments and strings.
 */
final class HullWordScanner implements ITokenScanner {

	/** What a piece of text is, for its colour. */
	enum Kind {
		KEYWORD, QUANTITY, DECLARED, PART, OPTION, OTHER
	}

	/** Words that are followed by the name of what they declare. */
	private static final Set<String> DECLARING = Set.of("catalog", "family", "cable", "terminator", "tee", "tap", "feedthrough",
			"adapter", "device", "series", "supply", "network", "bulkhead", "hull", "profile", "wall", "serial");

	private final Supplier<Set<String>> keywords;
	private final Function<String, Kind> names;
	private final Function<Kind, IToken> tokens;

	private String text = "";
	private int base;
	private int position;
	private int start;
	private String previous = "";

	/**
	 * @param keywords the words of the language, empty as long as they are not known
	 * @param names    what a name stands for, where it is not declared; {@link Kind#OTHER} as long as that is not known
	 * @param tokens   what the viewer wants for each kind
	 */
	HullWordScanner(Supplier<Set<String>> keywords, Function<String, Kind> names, Function<Kind, IToken> tokens) {
		this.keywords = keywords;
		this.names = names;
		this.tokens = tokens;
	}

	@Override
	public void setRange(IDocument document, int offset, int length) {
		base = offset;
		position = 0;
		start = 0;
		previous = "";
		try {
			text = document.get(offset, length);
		} catch (BadLocationException e) {
			text = "";
		}
	}

	@Override
	public IToken nextToken() {
		start = position;
		if (position >= text.length()) {
			return Token.EOF;
		}
		char c = text.charAt(position);
		if (Character.isDigit(c)) {
			return tokens.apply(number());
		}
		if (isNameStart(c)) {
			return tokens.apply(word());
		}
		position++;
		if (c == '\n' || c == '{' || c == '}') {
			previous = "";
		}
		return Character.isWhitespace(c) ? Token.WHITESPACE : tokens.apply(Kind.OTHER);
	}

	private Kind number() {
		while (position < text.length() && (Character.isDigit(text.charAt(position)) || isDecimalPoint(position))) {
			position++;
		}
		int unit = position;
		while (unit < text.length() && text.charAt(unit) == ' ') {
			unit++;
		}
		int end = unit;
		while (end < text.length() && (isNamePart(text.charAt(end)) || text.charAt(end) == '/')) {
			end++;
		}
		String candidate = text.substring(unit, end);
		boolean wasHull = "hull".equals(previous);
		previous = "";
		if (unit < text.length() && text.charAt(unit) == '%') {
			position = unit + 1;
		} else if (!candidate.isEmpty() && !keywords.get().contains(candidate)) {
			position = end;
		}
		return wasHull ? Kind.DECLARED : Kind.QUANTITY;
	}

	/** In 7.5 the point belongs to the number, in 1..4 it does not. */
	private boolean isDecimalPoint(int at) {
		return text.charAt(at) == '.' && at + 1 < text.length() && Character.isDigit(text.charAt(at + 1));
	}

	private Kind word() {
		boolean member = position > 0 && text.charAt(position - 1) == '.';
		while (position < text.length() && isNamePart(text.charAt(position))) {
			position++;
		}
		String word = text.substring(start, position);
		boolean declared = !member && (isFollowedByColon() || DECLARING.contains(previous) && !keywords.get().contains(word));
		previous = word;
		if (declared) {
			return Kind.DECLARED;
		}
		return !member && keywords.get().contains(word) ? Kind.KEYWORD : names.apply(word);
	}

	private boolean isFollowedByColon() {
		int next = position;
		while (next < text.length() && text.charAt(next) == ' ') {
			next++;
		}
		return next < text.length() && text.charAt(next) == ':';
	}

	private static boolean isNameStart(char c) {
		return Character.isLetter(c) || c == '_' || c == '^' || c == '\u00b0';
	}

	private static boolean isNamePart(char c) {
		return Character.isLetterOrDigit(c) || c == '_' || c == '\u00b2' || c == '\u00b0';
	}

	@Override
	public int getTokenOffset() {
		return base + start;
	}

	@Override
	public int getTokenLength() {
		return position - start;
	}
}
