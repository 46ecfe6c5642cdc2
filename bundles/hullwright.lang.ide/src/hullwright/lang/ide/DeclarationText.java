/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.documentation.IEObjectDocumentationProvider;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Explains a name by what its declaration says, so that a part's data can be read where the part is used.
 */
class DeclarationText implements IEObjectDocumentationProvider {

	private static final int MOST_LINES = 14;

	@Override
	public String getDocumentation(EObject element) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(element);
		if (node == null) {
			return null;
		}
		List<String> lines = NodeModelUtils.getTokenText(node).isBlank() ? List.of() : unindented(node.getText().strip());
		String text = String.join("\n", lines.subList(0, Math.min(MOST_LINES, lines.size())));
		return lines.size() > MOST_LINES ? text + "\n\u2026" : text;
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
