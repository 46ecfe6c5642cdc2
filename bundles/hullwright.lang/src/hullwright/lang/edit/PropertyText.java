/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Sets properties in the braces of an element.
 */
public final class PropertyText {

	private PropertyText() {
	}

	/** A statement of a block: its nodes, and the alternative of the grammar that it follows. */
	private record Statement(EObject alternative, List<INode> nodes) {

		int start() {
			return nodes.get(0).getOffset();
		}

		int end() {
			return nodes.get(nodes.size() - 1).getEndOffset();
		}
	}

	/**
	 * Sets a property. A statement that begins with the same words is replaced; where it says at its end what it is for
	 * ({@code for 127488}), only one for the same.
	 *
	 * @param property the words that it begins with
	 * @param value what follows; may be empty
	 */
	public static TextEdit set(EObject element, String property, String value) {
		TextLines lines = new TextLines(element);
		String statement = (property + " " + value).strip();
		Optional<ILeafNode> open = BlockBraces.open(element);
		Optional<ILeafNode> close = BlockBraces.close(element);
		if (open.isEmpty() || close.isEmpty()) {
			return new TextEdit(NodeModelUtils.findActualNodeFor(element).getEndOffset(), 0, " { " + statement + " }");
		}
		List<Statement> statements = statements(element, open.get(), close.get());
		for (Statement each : statements) {
			String written = lines.between(each.start(), each.end());
			if ((written + " ").startsWith(property + " ") && purpose(written).equals(purpose(statement))) {
				return new TextEdit(each.start(), each.end() - each.start(), statement);
			}
		}
		return added(lines, statements, open.get(), close.get(), statement);
	}

	private static String purpose(String statement) {
		int at = statement.indexOf(" for ");
		return at < 0 ? "" : statement.substring(at);
	}

	private static TextEdit added(TextLines lines, List<Statement> statements, ILeafNode open, ILeafNode close, String statement) {
		if (lines.startsItsLine(close.getOffset())) {
			String indent = statements.isEmpty() ? lines.indentOfLine(close.getOffset()) + "\t" : lines.indentOfLine(statements.get(0).start());
			return new TextEdit(lines.startOfLine(close.getOffset()), 0, indent + statement + lines.lineEnd());
		}
		if (statements.isEmpty()) {
			return new TextEdit(open.getEndOffset(), close.getOffset() - open.getEndOffset(), " " + statement + " ");
		}
		return new TextEdit(statements.get(statements.size() - 1).end(), 0, "; " + statement);
	}

	private static List<Statement> statements(EObject element, ILeafNode open, ILeafNode close) {
		List<Statement> found = new ArrayList<>();
		ICompositeNode whole = NodeModelUtils.findActualNodeFor(element);
		INode last = null;
		for (INode node : whole.getChildren()) {
			boolean hidden = node instanceof ILeafNode leaf && leaf.isHidden();
			boolean inside = node.getOffset() >= open.getEndOffset() && node.getEndOffset() <= close.getOffset();
			EObject grammar = node.getGrammarElement();
			if (hidden || !inside || isSeparator(node)) {
				last = isSeparator(node) ? null : last;
				continue;
			}
			EObject alternative = alternativeOf(grammar);
			boolean goesOn = last != null && !found.isEmpty() && found.get(found.size() - 1).alternative == alternative
					&& found.get(found.size() - 1).nodes.stream().noneMatch(each -> each.getGrammarElement() == grammar && isKeyword(each));
			if (goesOn) {
				found.get(found.size() - 1).nodes.add(node);
			} else {
				found.add(new Statement(alternative, new ArrayList<>(List.of(node))));
			}
			last = node;
		}
		return found;
	}

	private static boolean isKeyword(INode node) {
		return node.getGrammarElement() instanceof org.eclipse.xtext.Keyword;
	}

	private static boolean isSeparator(INode node) {
		String text = node.getText().strip();
		return text.equals(";") || text.equals(",") && isSeparatorRule(node);
	}

	private static boolean isSeparatorRule(INode node) {
		return node.getGrammarElement() instanceof org.eclipse.xtext.RuleCall call && call.getRule().getName().equals("Separator");
	}

	/** The branch of the outermost choice of a rule: what tells one property from another. */
	private static EObject alternativeOf(EObject grammar) {
		EObject found = grammar;
		for (EObject each = grammar; each instanceof AbstractElement; each = each.eContainer()) {
			if (each.eContainer() instanceof Alternatives) {
				found = each;
			}
		}
		return found;
	}
}
