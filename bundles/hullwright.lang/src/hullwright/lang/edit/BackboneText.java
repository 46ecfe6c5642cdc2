/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.lang.imports.VisibleCatalogs;
import hullwright.spec.Backbone;
import hullwright.spec.BackboneItem;
import hullwright.spec.DataNetwork;
import hullwright.spec.Device;
import hullwright.spec.Named;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Writes new parts into the text of a backbone, a line each, indented like their neighbours.
 */
public final class BackboneText {

	private final Backbone backbone;
	private final VisibleCatalogs catalogs;
	private final String text;

	/** The text of a backbone that was parsed without errors. */
	public BackboneText(Backbone backbone, VisibleCatalogs catalogs) {
		this.backbone = backbone;
		this.catalogs = catalogs;
		this.text = NodeModelUtils.findActualNodeFor(backbone).getRootNode().getText();
	}

	/**
	 * Adds a part as the first or the last of the backbone.
	 *
	 * @param first whether it becomes the first
	 * @param keyword the word that introduces such a part
	 * @param wishedName its name, unless that is taken
	 * @param catalog the catalog that the part is in
	 * @param part the name of the part in that catalog
	 * @param condition when it is fitted, in the words of the language; empty for always
	 * @return the edit, or empty if the braces of the backbone cannot be found
	 */
	public Optional<TextEdit> add(boolean first, String keyword, String wishedName, String catalog, String part, String condition) {
		String item = keyword + " " + freeName(wishedName) + " : " + partName(catalog, part) + (condition.isEmpty() ? "" : " when " + condition);
		return first ? brace("{").map(open -> after(open, item)) : brace("}").map(close -> before(close, item));
	}

	private TextEdit after(ILeafNode open, String item) {
		String indent = backbone.getElements().isEmpty()
				? indentOfLine(open.getOffset()) + "\t"
				: indentOfLine(NodeModelUtils.findActualNodeFor(backbone.getElements().get(0)).getOffset());
		return new TextEdit(open.getEndOffset(), 0, lineEnd() + indent + item);
	}

	private TextEdit before(ILeafNode close, String item) {
		int lastElement = backbone.getElements().size() - 1;
		String indent = lastElement < 0
				? indentOfLine(close.getOffset()) + "\t"
				: indentOfLine(NodeModelUtils.findActualNodeFor(backbone.getElements().get(lastElement)).getOffset());
		int lineStart = startOfLine(close.getOffset());
		boolean braceAlone = text.substring(lineStart, close.getOffset()).isBlank();
		return braceAlone
				? new TextEdit(lineStart, 0, indent + item + lineEnd())
				: new TextEdit(close.getOffset(), 0, lineEnd() + indent + item + lineEnd() + indentOfLine(close.getOffset()));
	}

	private Optional<ILeafNode> brace(String which) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(backbone);
		ILeafNode found = null;
		for (ILeafNode leaf : node.getLeafNodes()) {
			if (!leaf.isHidden() && leaf.getText().equals(which)) {
				if (which.equals("{")) {
					return Optional.of(leaf);
				}
				found = leaf;
			}
		}
		return Optional.ofNullable(found);
	}

	private String partName(String catalog, String part) {
		return catalogs.declaring(backbone, part).size() > 1 ? catalog + "." + part : part;
	}

	private String freeName(String wished) {
		DataNetwork network = EcoreUtil2.getContainerOfType(backbone, DataNetwork.class);
		Set<String> taken = new HashSet<>();
		Stream.concat(EcoreUtil2.getAllContentsOfType(network, BackboneItem.class).stream(),
				EcoreUtil2.getAllContentsOfType(network, Device.class).stream()).map(Named::getName).forEach(taken::add);
		String name = wished;
		for (int number = 2; taken.contains(name); number++) {
			name = wished + number;
		}
		return name;
	}

	private int startOfLine(int offset) {
		return text.lastIndexOf('\n', offset - 1) + 1;
	}

	private String indentOfLine(int offset) {
		int start = startOfLine(offset);
		int end = start;
		while (end < text.length() && (text.charAt(end) == ' ' || text.charAt(end) == '\t')) {
			end++;
		}
		return text.substring(start, end);
	}

	private String lineEnd() {
		return text.contains("\r\n") ? "\r\n" : "\n";
	}
}
