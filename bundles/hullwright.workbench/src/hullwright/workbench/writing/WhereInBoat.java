/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import hullwright.workbench.editor.HullPartitions;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.TextUtilities;

/**
 * Where in the boat a place of the text is: what it stands in, from the series down to its own line. Braces say so, so it is
 * known while the text is not sound.
 */
final class WhereInBoat {

	private static final Pattern HEAD = Pattern.compile("(\\p{L}+)(?:[ \\t]+([\\p{L}\\p{N}_.]+))?.*");
	private static final Pattern ITEM = Pattern.compile("(terminator|tee|tap|isolator|wall|adapter|device|drop|feed|supply|bank|converter|hull|switch)[ \\t]+([\\p{L}\\p{N}_.]+)\\b.*");
	private static final String BETWEEN = " \u203a ";

	private WhereInBoat() {
	}

	/** The way to a place, such as {@code series Corran36 › network instruments › backbone › tee bow}; empty outside of everything. */
	static String at(IDocument document, int offset) throws BadLocationException {
		Deque<String> way = new ArrayDeque<>();
		int line = document.getLineOfOffset(offset);
		Matcher own = ITEM.matcher(text(document, line));
		if (own.matches()) {
			way.addFirst(own.group(1) + " " + own.group(2));
		}
		int closed = 0;
		for (int at = offset - 1; at >= 0; at--) {
			char c = document.getChar(at);
			if (c != '{' && c != '}' || !isText(document, at)) {
				continue;
			}
			if (c == '}') {
				closed++;
			} else if (closed-- == 0) {
				closed = 0;
				int opening = document.getLineOfOffset(at);
				if (opening != line || !own.matches()) {
					way.addFirst(head(text(document, opening)));
				}
			}
		}
		return String.join(BETWEEN, way);
	}

	private static boolean isText(IDocument document, int offset) throws BadLocationException {
		return IDocument.DEFAULT_CONTENT_TYPE.equals(TextUtilities.getContentType(document, HullPartitions.PARTITIONING, offset, false));
	}

	private static String text(IDocument document, int line) throws BadLocationException {
		return document.get(document.getLineOffset(line), document.getLineInformation(line).getLength()).strip();
	}

	/** The first word of a statement with its name, if what follows is one. */
	private static String head(String line) {
		Matcher head = HEAD.matcher(line);
		boolean unnamed = line.startsWith("backbone of") || line.startsWith("when") || !head.matches() || head.group(2) == null;
		return unnamed ? line.replaceFirst("[ \\t]*\\{.*", "").replaceFirst("^backbone of .*", "backbone") : head.group(1) + " " + head.group(2);
	}
}
