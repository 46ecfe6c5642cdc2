/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.formatting;

/**
 * What a text consists of beside white space: a word, a sign or a comment.
 *
 * @param kind what it is
 * @param text as it stands; of a comment to the end of the line without white space at its end
 * @param offset where it begins in the text, in characters
 * @param lineBreaks how many line breaks lie between it and the piece before it
 * @param startsItem whether an item of the block around it begins here, or of the file
 * @param spaced whether a space stands before it when the piece before it is on the same line
 */
record Piece(Kind kind, String text, int offset, int lineBreaks, boolean startsItem, boolean spaced) {

	/** What a piece can be. */
	enum Kind {
		WORD, BLOCK_START, BLOCK_END, BLOCK_COMMENT, LINE_COMMENT
	}

	/** Where it ends in the text, in characters. */
	int end() {
		return offset + text.length();
	}

	boolean isComment() {
		return kind == Kind.BLOCK_COMMENT || kind == Kind.LINE_COMMENT;
	}

	/** Whether what comes after it cannot stand on the line on which it begins. */
	boolean endsItsLine() {
		return kind == Kind.LINE_COMMENT || kind == Kind.BLOCK_COMMENT && (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0);
	}
}
