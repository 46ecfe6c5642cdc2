/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.workbench.live.LanguageService;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.TextUtilities;

/**
 * What can be told of a .hull text without asking the server.
 */
public final class HullText {

	private HullText() {
	}

	/** Whether this is a character of a name. */
	static boolean isNamePart(char c) {
		return Character.isLetterOrDigit(c) || c == '_' || c == '\u00b2' || c == '\u00b0';
	}

	/** The word or number that an offset lies in or behind, outside of comments and quotes; empty if there is none. */
	public static Optional<IRegion> wordAt(IDocument document, int offset) {
		try {
			int start = offset;
			while (start > 0 && isNamePart(document.getChar(start - 1))) {
				start--;
			}
			int end = offset;
			while (end < document.getLength() && isNamePart(document.getChar(end))) {
				end++;
			}
			boolean inText = start < end && IDocument.DEFAULT_CONTENT_TYPE
					.equals(TextUtilities.getContentType(document, HullPartitions.PARTITIONING, start, false));
			return inText ? Optional.of(new Region(start, end - start)) : Optional.empty();
		} catch (BadLocationException e) {
			return Optional.empty();
		}
	}

	/** The same if it can be a name: no mere word of the language, and no short number. */
	public static Optional<IRegion> nameAt(IDocument document, int offset) {
		Set<String> keywords = LanguageService.get().keywords().getNow(Set.of());
		return wordAt(document, offset).filter(word -> {
			try {
				String text = document.get(word.getOffset(), word.getLength());
				boolean pgn = text.length() > 4 && text.chars().allMatch(Character::isDigit);
				return pgn || !Character.isDigit(text.charAt(0)) && (!keywords.contains(text) || isUsedAsName(document, word));
			} catch (BadLocationException e) {
				return false;
			}
		});
	}

	/** A word of the language is a name where a point stands at it, or a colon behind it. */
	private static boolean isUsedAsName(IDocument document, IRegion word) throws BadLocationException {
		int end = word.getOffset() + word.getLength();
		int next = end;
		while (next < document.getLength() && document.getChar(next) == ' ') {
			next++;
		}
		return word.getOffset() > 0 && document.getChar(word.getOffset() - 1) == '.'
				|| end < document.getLength() && document.getChar(end) == '.'
				|| next < document.getLength() && document.getChar(next) == ':';
	}
}
