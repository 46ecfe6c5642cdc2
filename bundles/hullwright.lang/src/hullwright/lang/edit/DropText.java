/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.Drop;
import hullwright.spec.Leg;
import hullwright.spec.PortReference;
import hullwright.spec.SpecPackage;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Changes the cabling of drops and feeds: what is listed after {@code via}.
 */
public final class DropText {

	private final PartNames parts;

	/** Edits of drops in a text that was parsed without errors. */
	public DropText(PartNames parts) {
		this.parts = parts;
	}

	/** Inserts an adapter before one of the pieces of a drop or a feed; empty if the place cannot be found. */
	public Optional<TextEdit> insert(EObject element, int position, String catalog, String part) {
		EObject drop = EcoreUtil2.getContainerOfType(element, Drop.class);
		EObject run = drop == null ? element : drop;
		String name = parts.at(element, catalog, part);
		List<Leg> legs = EcoreUtil2.eAllContentsAsList(run).stream().filter(Leg.class::isInstance).map(Leg.class::cast).toList();
		if (position < legs.size()) {
			return Optional.of(new TextEdit(NodeModelUtils.findActualNodeFor(legs.get(position)).getOffset(), 0, name + ", "));
		}
		if (!legs.isEmpty()) {
			return Optional.of(new TextEdit(NodeModelUtils.findActualNodeFor(legs.get(legs.size() - 1)).getEndOffset(), 0, ", " + name));
		}
		EStructuralFeature from = run.eClass().getEStructuralFeature(SpecPackage.Literals.DROP__FROM.getName());
		return from == null ? Optional.empty() : NodeModelUtils.findNodesForFeature(run, from).stream().findFirst()
				.map(port -> new TextEdit(port.getEndOffset(), 0, " via " + name));
	}

	/** Names another port where a drop, a feed or a join names one; empty if it does not name that port. */
	public static Optional<TextEdit> plug(EObject element, String old, String port) {
		EObject drop = EcoreUtil2.getContainerOfType(element, Drop.class);
		return EcoreUtil2.eAllContentsAsList(drop == null ? element : drop).stream().filter(PortReference.class::isInstance)
				.map(NodeModelUtils::findActualNodeFor)
				.filter(node -> NodeModelUtils.getTokenText(node).equals(old)).findFirst()
				.map(node -> new TextEdit(node.getOffset(), node.getLength(), port));
	}

	/** Removes a piece with the comma beside it, or with the word that begins the list if it is the only one. */
	static TextEdit without(EObject leg) {
		INode node = NodeModelUtils.findActualNodeFor(leg);
		ILeafNode after = visible(node, true);
		if (after != null && after.getText().equals(",")) {
			ILeafNode next = visible(after, true);
			return new TextEdit(node.getOffset(), (next == null ? after.getEndOffset() : next.getOffset()) - node.getOffset(), "");
		}
		ILeafNode before = visible(node, false);
		if (before != null && before.getText().equals(",")) {
			return new TextEdit(before.getOffset(), node.getEndOffset() - before.getOffset(), "");
		}
		ILeafNode next = visible(node, true);
		int start = before == null ? node.getOffset() : before.getOffset();
		return new TextEdit(start, (next == null ? node.getEndOffset() : next.getOffset()) - start, "");
	}

	private static ILeafNode visible(INode from, boolean forward) {
		ILeafNode found = null;
		for (ILeafNode leaf : from.getRootNode().getLeafNodes()) {
			if (leaf.isHidden()) {
				continue;
			}
			if (forward && leaf.getOffset() >= from.getEndOffset()) {
				return leaf;
			}
			if (!forward && leaf.getEndOffset() <= from.getOffset()) {
				found = leaf;
			}
		}
		return found;
	}
}
