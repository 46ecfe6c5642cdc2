/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.Backbone;
import hullwright.spec.BackboneElement;
import hullwright.spec.BackboneItem;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Writes parts into the walk along a backbone, a line each, indented like their neighbours.
 */
public final class BackboneText {

	private final PartNames parts;

	/** Edits of walks in a text that was parsed without errors. */
	public BackboneText(PartNames parts) {
		this.parts = parts;
	}

	/**
	 * A part to be written.
	 *
	 * @param keyword the word that introduces such a part
	 * @param wishedName its name, unless that is taken
	 * @param catalog the catalog that the part is in
	 * @param part the name of the part in that catalog
	 * @param condition when it is fitted, in the words of the language; empty for always
	 */
	public record Item(String keyword, String wishedName, String catalog, String part, String condition) {
	}

	/** Adds a part as the first or the last of a backbone; empty if its braces cannot be found. */
	public Optional<TextEdit> add(Backbone backbone, boolean first, Item item) {
		TextLines lines = new TextLines(backbone);
		List<BackboneElement> elements = backbone.getElements();
		String written = written(backbone, item, item.condition());
		return first
				? BlockBraces.open(backbone).map(open -> after(lines, open, elements.isEmpty() ? null : elements.get(0), written))
				: BlockBraces.close(backbone).map(close -> lines.beforeBrace(close, elements.isEmpty() ? null : elements.get(elements.size() - 1), written));
	}

	private static TextEdit after(TextLines lines, ILeafNode open, EObject firstInside, String item) {
		String indent = firstInside == null
				? lines.indentOfLine(open.getOffset()) + "\t"
				: lines.indentOfLine(NodeModelUtils.findActualNodeFor(firstInside).getOffset());
		return new TextEdit(open.getEndOffset(), 0, lines.lineEnd() + indent + item);
	}

	/** Inserts a part beside an item of a walk. Within a block of conditions these hold for it, too, and it needs none of its own. */
	public TextEdit insert(BackboneItem neighbour, boolean before, Item item) {
		boolean inBlock = !(neighbour.eContainer() instanceof Backbone);
		return new TextLines(neighbour).beside(neighbour, before, written(neighbour, item, inBlock ? "" : item.condition()));
	}

	/** Moves an item to another place in its walk, as it is written; empty if both are not in one walk. */
	public List<TextEdit> move(BackboneItem item, BackboneItem neighbour, boolean before) {
		if (item == neighbour || EcoreUtil2.getContainerOfType(item, Backbone.class) != EcoreUtil2.getContainerOfType(neighbour, Backbone.class)) {
			return List.of();
		}
		TextLines lines = new TextLines(item);
		ICompositeNode node = NodeModelUtils.findActualNodeFor(item);
		int end = node.getEndOffset();
		boolean comment = lines.startsItsLine(node.getOffset()) && lines.endsItsLine(end);
		String written = comment ? lines.between(node.getOffset(), lines.startOfNextLine(end)).stripTrailing() : lines.between(node.getOffset(), end);
		return List.of(lines.without(item), lines.beside(neighbour, before, written));
	}

	private String written(EObject place, Item item, String condition) {
		return item.keyword() + " " + FreeNames.like(item.wishedName(), place) + " : " + parts.at(place, item.catalog(), item.part())
				+ (condition.isEmpty() ? "" : " when " + condition);
	}
}
