/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.formatting;

import hullwright.lang.formatting.Piece.Kind;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;

/**
 * Takes a text without syntax errors apart into its pieces.
 */
final class Pieces {

	private final ItemStarts itemStarts;
	/** The rule in which '..' joins whole numbers, tightly; elsewhere it stands between quantities. */
	private final AbstractRule portNumbers;

	private final List<Piece> pieces = new ArrayList<>();
	private final Deque<Set<EObject>> blocks = new ArrayDeque<>();
	private int lineBreaks;
	/** The word before, unless a comment stands between. */
	private ILeafNode wordBefore;

	private Pieces(ItemStarts itemStarts, AbstractRule portNumbers) {
		this.itemStarts = itemStarts;
		this.portNumbers = portNumbers;
		blocks.push(itemStarts.inFile());
	}

	/**
	 * The pieces of a text, in its order.
	 *
	 * @param portNumbers the rule in which '..' joins whole numbers
	 */
	static List<Piece> of(ICompositeNode root, ItemStarts itemStarts, AbstractRule portNumbers) {
		Pieces reading = new Pieces(itemStarts, portNumbers);
		for (ILeafNode leaf : root.getLeafNodes()) {
			reading.add(leaf);
		}
		return reading.pieces;
	}

	private void add(ILeafNode leaf) {
		String text = leaf.getText();
		if (!leaf.isHidden()) {
			addWord(leaf, text);
		} else if (text.startsWith("//")) {
			addComment(Kind.LINE_COMMENT, text.stripTrailing(), leaf);
			lineBreaks = text.endsWith("\n") ? 1 : 0;
		} else if (text.startsWith("/*")) {
			addComment(Kind.BLOCK_COMMENT, text, leaf);
		} else {
			lineBreaks += lineBreaksIn(text);
		}
	}

	private void addComment(Kind kind, String text, ILeafNode leaf) {
		add(kind, text, leaf, false, true);
		wordBefore = null;
	}

	private void addWord(ILeafNode leaf, String text) {
		boolean startsItem = ItemStarts.begins(leaf, blocks.peek());
		boolean spaced = !clings(leaf);
		if (isSign(leaf, "{")) {
			blocks.push(itemStarts.after((Keyword) leaf.getGrammarElement()));
			add(Kind.BLOCK_START, text, leaf, startsItem, spaced);
		} else if (isSign(leaf, "}")) {
			blocks.pop();
			add(Kind.BLOCK_END, text, leaf, false, spaced);
		} else {
			add(Kind.WORD, text, leaf, startsItem, spaced);
		}
		wordBefore = leaf;
	}

	private void add(Kind kind, String text, ILeafNode leaf, boolean startsItem, boolean spaced) {
		pieces.add(new Piece(kind, text, leaf.getTotalOffset(), lineBreaks, startsItem, spaced));
		lineBreaks = 0;
	}

	private static int lineBreaksIn(String text) {
		int breaks = 0;
		for (int at = 0; at < text.length(); at++) {
			boolean pair = text.startsWith("\r\n", at);
			breaks += text.charAt(at) == '\n' || text.charAt(at) == '\r' && !pair ? 1 : 0;
		}
		return breaks;
	}

	private boolean clings(ILeafNode word) {
		if (isSign(word, ",") || isSign(word, ";") || isTight(word)) {
			return true;
		}
		return wordBefore != null && (isTight(wordBefore) || belongTogether(wordBefore, word));
	}

	private boolean isTight(ILeafNode word) {
		return isSign(word, ".") || isSign(word, "..") && GrammarUtil.containingRule(word.getGrammarElement()) == portNumbers;
	}

	private static boolean isSign(ILeafNode word, String sign) {
		return word.getGrammarElement() instanceof Keyword keyword && keyword.getValue().equals(sign);
	}

	/** Whether two words that stand side by side are parts of something that may hold no white space, such as a number. */
	private static boolean belongTogether(ILeafNode one, ILeafNode next) {
		if (one.getTotalEndOffset() != next.getTotalOffset()) {
			return false;
		}
		for (INode each = one.getParent(); each != null; each = each.getParent()) {
			if (each.getTotalEndOffset() >= next.getTotalEndOffset() && isUnbroken(each.getGrammarElement())) {
				return true;
			}
		}
		return false;
	}

	private static boolean isUnbroken(EObject element) {
		EObject called = element instanceof CrossReference reference ? reference.getTerminal() : element;
		EObject rule = called instanceof RuleCall call ? call.getRule() : called;
		return rule instanceof ParserRule parserRule && parserRule.isDefinesHiddenTokens();
	}
}
