/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * The lines of a text that was parsed, for edits that look like what stands around them.
 */
final class TextLines {

	private final String text;

	/** The text that an element stands in. */
	TextLines(EObject element) {
		text = NodeModelUtils.findActualNodeFor(element).getRootNode().getText();
	}

	/** The text from an offset to another. */
	String between(int start, int end) {
		return text.substring(start, end);
	}

	/** Where the line of an offset starts. */
	int startOfLine(int offset) {
		return text.lastIndexOf('\n', offset - 1) + 1;
	}

	/** Where the line after that of an offset starts; the end of the text if there is none. */
	int startOfNextLine(int offset) {
		int end = text.indexOf('\n', offset);
		return end < 0 ? text.length() : end + 1;
	}

	/** The blanks and tabs that the line of an offset starts with. */
	String indentOfLine(int offset) {
		int start = startOfLine(offset);
		int end = start;
		while (end < text.length() && (text.charAt(end) == ' ' || text.charAt(end) == '\t')) {
			end++;
		}
		return text.substring(start, end);
	}

	/** How the lines of this text end. */
	String lineEnd() {
		return text.contains("\r\n") ? "\r\n" : "\n";
	}

	/** Whether nothing stands in the line before an offset. */
	boolean startsItsLine(int offset) {
		return text.substring(startOfLine(offset), offset).isBlank();
	}

	/** Whether nothing but a comment stands in the line after an offset. */
	boolean endsItsLine(int offset) {
		String rest = text.substring(offset, startOfNextLine(offset)).strip();
		return rest.isEmpty() || rest.startsWith("//");
	}

	/** Where the comment lines directly above the line of an offset start; its own start if there are none. */
	int startWithComments(int offset) {
		int start = startOfLine(offset);
		while (start > 0 && text.substring(startOfLine(start - 1), start).strip().startsWith("//")) {
			start = startOfLine(start - 1);
		}
		return start;
	}

	/** Inserts a line of its own before the closing brace of a block, indented like what stands in it. */
	TextEdit beforeBrace(ILeafNode close, EObject lastInside, String item) {
		String indent = lastInside == null ? indentOfLine(close.getOffset()) + "\t" : indentOfLine(NodeModelUtils.findActualNodeFor(lastInside).getOffset());
		int lineStart = startOfLine(close.getOffset());
		return startsItsLine(close.getOffset())
				? new TextEdit(lineStart, 0, indent + item + lineEnd())
				: new TextEdit(close.getOffset(), 0, lineEnd() + indent + item + lineEnd() + indentOfLine(close.getOffset()));
	}

	/** Inserts a line of its own before or after an element. */
	TextEdit beside(EObject neighbour, boolean before, String item) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(neighbour);
		String indent = indentOfLine(node.getOffset());
		if (before) {
			return startsItsLine(node.getOffset())
					? new TextEdit(startWithComments(node.getOffset()), 0, indent + item + lineEnd())
					: new TextEdit(node.getOffset(), 0, item + lineEnd() + indent);
		}
		int end = node.getEndOffset();
		boolean ownLines = endsItsLine(end) && startOfNextLine(end) < text.length();
		return ownLines ? new TextEdit(startOfNextLine(end), 0, indent + item + lineEnd()) : new TextEdit(end, 0, lineEnd() + indent + item);
	}

	/** Removes an element, with its line if it stands there alone; what is said of it at the end of its line goes with it. */
	TextEdit without(EObject element) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(element);
		int start = node.getOffset();
		int end = node.getEndOffset();
		if (startsItsLine(start) && endsItsLine(end)) {
			int from = startOfLine(start);
			return new TextEdit(from, startOfNextLine(end) - from, "");
		}
		while (end < text.length() && text.charAt(end) == ' ') {
			end++;
		}
		return new TextEdit(start, end - start, "");
	}
}
