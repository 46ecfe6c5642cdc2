/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.formatting;

import com.google.inject.Inject;
import com.google.inject.Singleton;
import hullwright.lang.formatting.FormattedText.Problem;
import hullwright.lang.services.HullGrammarAccess;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.parser.IParser;
import org.eclipse.xtext.util.LineAndColumn;

/**
 * The one layout of .hull text. Only white space changes: before a layout is handed out it is read again and must hold the
 * same words and comments. A text with a syntax error is left alone; names that refer to nothing do not matter.
 * <p>
 * Columns are not aligned, so that another name changes its own line only and a revision shows what was revised.
 */
@Singleton
public final class CanonicalLayout {

	private static final String BYTE_ORDER_MARK = "\uFEFF";

	private final IParser parser;
	private final HullGrammarAccess grammar;
	private final ItemStarts itemStarts;

	@Inject
	CanonicalLayout(IParser parser, HullGrammarAccess grammar) {
		this.parser = parser;
		this.grammar = grammar;
		this.itemStarts = new ItemStarts(grammar.getSpecFileRule());
	}

	/** Lays a text out. Line ends and a byte order mark stay as they are. */
	public FormattedText format(String text) {
		IParseResult read = parser.parse(new StringReader(text));
		List<Problem> problems = problems(read);
		return new FormattedText(problems.isEmpty() ? applied(gaps(text, read), text) : text, problems);
	}

	/** The white space that differs from the canonical layout; nothing if the text has a syntax error. */
	List<Gap> changes(String text) {
		IParseResult read = parser.parse(new StringReader(text));
		return problems(read).isEmpty() ? gaps(text, read) : List.of();
	}

	private static String applied(List<Gap> gaps, String text) {
		StringBuilder result = new StringBuilder();
		int at = 0;
		for (Gap gap : gaps) {
			result.append(text, at, gap.offset()).append(gap.replacement());
			at = gap.end();
		}
		return result.append(text, at, text.length()).toString();
	}

	/** The white space that differs; none if what came out did not hold the same words and comments. */
	private List<Gap> gaps(String text, IParseResult read) {
		List<Piece> pieces = pieces(read);
		List<Gap> gaps = gaps(text, pieces).stream().filter(gap -> !gap.replacement().equals(text.substring(gap.offset(), gap.end()))).toList();
		IParseResult again = parser.parse(new StringReader(applied(gaps, text)));
		return problems(again).isEmpty() && texts(pieces(again)).equals(texts(pieces)) ? gaps : List.of();
	}

	private static List<Gap> gaps(String text, List<Piece> pieces) {
		String lineEnd = text.indexOf('\n') > 0 && text.charAt(text.indexOf('\n') - 1) == '\r' ? "\r\n" : "\n";
		List<String> before = Arrangement.of(pieces, lineEnd);
		List<Gap> gaps = new ArrayList<>();
		int end = text.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK.length() : 0;
		for (int at = 0; at < pieces.size(); at++) {
			gaps.add(new Gap(end, pieces.get(at).offset(), before.get(at)));
			end = pieces.get(at).end();
		}
		gaps.add(new Gap(end, text.length(), pieces.isEmpty() ? "" : lineEnd));
		return gaps;
	}

	private List<Piece> pieces(IParseResult read) {
		return Pieces.of(read.getRootNode(), itemStarts, grammar.getPortGroupRule());
	}

	private static List<String> texts(List<Piece> pieces) {
		return pieces.stream().map(Piece::text).toList();
	}

	private static List<Problem> problems(IParseResult read) {
		return StreamSupport.stream(read.getSyntaxErrors().spliterator(), false).map(CanonicalLayout::problem).toList();
	}

	private static Problem problem(INode node) {
		LineAndColumn start = NodeModelUtils.getLineAndColumn(node, node.getOffset());
		return new Problem(node.getOffset(), node.getLength(), start.getLine(), start.getColumn(), node.getSyntaxErrorMessage().getMessage());
	}
}
