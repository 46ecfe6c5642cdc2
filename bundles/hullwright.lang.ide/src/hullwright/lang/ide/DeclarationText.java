/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.documentation.IEObjectDocumentationProvider;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Explains a name by what its declaration says, so that a part's data can be read where the part is used.
 */
class DeclarationText implements IEObjectDocumentationProvider {

	private static final Pattern BLANK_LINE = Pattern.compile("\\R[ \\t]*\\R");

	private static final int MOST_LINES = 14;

	@Override
	public String getDocumentation(EObject element) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(element);
		if (node == null) {
			return null;
		}
		List<String> lines = NodeModelUtils.getTokenText(node).isBlank() ? List.of() : unindented(withOwnComment(node));
		String text = String.join("\n", lines.subList(0, Math.min(MOST_LINES, lines.size())));
		return lines.size() > MOST_LINES ? text + "\n\u2026" : text;
	}

	/** The declaration with the comment that stands right above it; what a blank line parts from it belongs to something else. */
	private static String withOwnComment(ICompositeNode node) {
		String text = node.getText();
		int ownText = node.getOffset() - node.getTotalOffset();
		Matcher blankLine = BLANK_LINE.matcher(text).region(0, ownText);
		int start = 0;
		while (blankLine.find()) {
			start = blankLine.end();
		}
		return text.substring(start).strip();
	}

	/** Without the indentation that the declaration has where it stands. */
	private static List<String> unindented(String text) {
		List<String> lines = text.lines().toList();
		int indent = lines.stream().skip(1).filter(line -> !line.isBlank())
				.mapToInt(line -> line.length() - line.stripLeading().length()).min().orElse(0);
		return lines.stream().map(line -> line.length() - line.stripLeading().length() >= indent && line != lines.get(0)
				? line.substring(indent) : line.strip()).toList();
	}
}
