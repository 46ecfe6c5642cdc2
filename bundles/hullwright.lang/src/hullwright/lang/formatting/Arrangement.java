/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.formatting;

import hullwright.lang.formatting.Piece.Kind;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * Decides what stands before each piece of a text.
 * <p>
 * An item begins its line. A block is opened, one item a line, if a line break stands in it or if its item does not fit on a
 * line; both blocks of a condition are opened together. Between items one empty line is kept. Line breaks within an item are
 * kept only where it does not fit on a line or a comment stands at them. Since no decision rests on anything but words, comments
 * and the line breaks that the layout itself keeps, laying out twice changes nothing.
 */
final class Arrangement {

	/** How wide a line may be, a tab counting as four columns. */
	static final int WIDTH = 120;

	private static final int TAB = 4;
	/** How much deeper a line within an item stands than the item: deeper than the items of a block that the item opens. */
	private static final int CONTINUATION = 2;

	private final List<Piece> pieces;
	private final String lineEnd;
	private final int[] partner;
	private final String[] before;

	private Arrangement(List<Piece> pieces, String lineEnd) {
		this.pieces = pieces;
		this.lineEnd = lineEnd;
		this.partner = partners(pieces);
		this.before = new String[pieces.size()];
	}

	/** The white space before each piece. */
	static List<String> of(List<Piece> pieces, String lineEnd) {
		Arrangement arrangement = new Arrangement(pieces, lineEnd);
		arrangement.arrangeBlock(0, pieces.size(), 0);
		if (!pieces.isEmpty()) {
			arrangement.before[0] = "";
		}
		return List.of(arrangement.before);
	}

	/** For each brace, where its partner stands. */
	private static int[] partners(List<Piece> pieces) {
		int[] partner = new int[pieces.size()];
		Deque<Integer> open = new ArrayDeque<>();
		for (int at = 0; at < partner.length; at++) {
			if (pieces.get(at).kind() == Kind.BLOCK_START) {
				open.push(at);
			} else if (pieces.get(at).kind() == Kind.BLOCK_END) {
				partner[at] = open.pop();
				partner[partner[at]] = at;
			}
		}
		return partner;
	}

	/** Arranges the pieces from one to another, which are whole items and comments between them. */
	private void arrangeBlock(int from, int to, int indent) {
		for (int at = from; at < to;) {
			if (pieces.get(at).isComment()) {
				before[at] = isTrailing(at, to) ? " " : beforeItem(at, from, indent);
				at++;
			} else {
				int end = endOfItem(at, to);
				before[at] = beforeItem(at, from, indent);
				arrangeItem(at, end, indent);
				at = end;
			}
		}
	}

	private String beforeItem(int at, int from, int indent) {
		Piece piece = pieces.get(at);
		if (at > from && piece.lineBreaks() == 0 && pieces.get(at - 1).kind() == Kind.BLOCK_COMMENT) {
			return " ";
		}
		return at > from && piece.lineBreaks() > 1 ? lineEnd + newLine(indent) : newLine(indent);
	}

	/** Whether a comment between items belongs to what stands before it on its line, since nothing but comments follows there. */
	private boolean isTrailing(int comment, int to) {
		if (comment == 0 || pieces.get(comment).lineBreaks() > 0) {
			return false;
		}
		int last = comment;
		while (last + 1 < to && pieces.get(last + 1).isComment() && pieces.get(last + 1).lineBreaks() == 0) {
			last++;
		}
		return last + 1 == to || pieces.get(last + 1).lineBreaks() > 0;
	}

	/** The end of the item that begins here, without the comments between it and the next one. */
	private int endOfItem(int start, int to) {
		int end = start;
		do {
			end = pieces.get(end).kind() == Kind.BLOCK_START ? partner[end] + 1 : end + 1;
		} while (end < to && !pieces.get(end).startsItem());
		while (pieces.get(end - 1).isComment()) {
			end--;
		}
		return end;
	}

	/** Arranges all pieces of an item but the first. */
	private void arrangeItem(int start, int end, int indent) {
		if (!mustBreak(start, end) && fits(start, end, indent)) {
			arrangeInLine(start + 1, end);
			return;
		}
		int line = start;
		for (int at = start; at < end; at++) {
			if (pieces.get(at).kind() == Kind.BLOCK_START && partner[at] > at + 1) {
				arrangeLine(line, at + 1, indent);
				arrangeBlock(at + 1, partner[at], indent + 1);
				at = partner[at];
				before[at] = newLine(indent);
				line = at;
			}
		}
		arrangeLine(line, end, indent);
	}

	/** Whether an item cannot stand on one line, however short it is. */
	private boolean mustBreak(int start, int end) {
		return holdsBreakingComment(start, end) || holdsOpenBlock(start, end);
	}

	private boolean holdsOpenBlock(int start, int end) {
		int depth = 0;
		for (int at = start; at < end; at++) {
			Kind kind = pieces.get(at).kind();
			boolean emptyBlock = kind == Kind.BLOCK_END && partner[at] == at - 1;
			if (depth > 0 && !emptyBlock && pieces.get(at).lineBreaks() > 0) {
				return true;
			}
			depth += kind == Kind.BLOCK_START ? 1 : kind == Kind.BLOCK_END ? -1 : 0;
		}
		return false;
	}

	/** Whether a comment among these pieces ends its line or stands at a line break that is kept. */
	private boolean holdsBreakingComment(int start, int end) {
		for (int at = start; at < end; at++) {
			if (pieces.get(at).isComment()
					&& (pieces.get(at).endsItsLine() || at > start && isBroken(at) || at + 1 < end && isBroken(at + 1))) {
				return true;
			}
		}
		return false;
	}

	/** Whether a line break stands before a piece of an item, at a place where one can be kept. */
	private boolean isBroken(int at) {
		Piece piece = pieces.get(at);
		return piece.lineBreaks() > 0 && piece.spaced() && piece.kind() != Kind.BLOCK_START && piece.kind() != Kind.BLOCK_END;
	}

	private boolean fits(int start, int end, int indent) {
		int width = indent * TAB;
		for (int at = start; at < end && width <= WIDTH; at++) {
			Piece piece = pieces.get(at);
			width += piece.text().codePointCount(0, piece.text().length()) + (at > start && piece.spaced() ? 1 : 0);
		}
		return width <= WIDTH;
	}

	private void arrangeInLine(int from, int to) {
		for (int at = from; at < to; at++) {
			before[at] = pieces.get(at).spaced() ? " " : "";
		}
	}

	/** Arranges what stands on one line if it fits: a part of an item that ends before or with an opened block. */
	private void arrangeLine(int start, int end, int indent) {
		boolean joined = !holdsBreakingComment(start, end) && fits(start, end, indent);
		arrangeInLine(start + 1, end);
		for (int at = start + 1; at < end && !joined; at++) {
			if (pieces.get(at - 1).kind() == Kind.LINE_COMMENT || isBroken(at)) {
				before[at] = newLine(pieces.get(at).kind() == Kind.BLOCK_START ? indent : indent + CONTINUATION);
			}
		}
	}

	private String newLine(int indent) {
		return lineEnd + "\t".repeat(indent);
	}
}
