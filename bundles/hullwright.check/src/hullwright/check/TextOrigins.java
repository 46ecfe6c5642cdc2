/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Origin;
import hullwright.resolve.TextPlaces;
import hullwright.spec.SpecPackage;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.util.LineAndColumn;

/**
 * Finds the places of elements in the texts that were parsed: where they are named, else the word that introduces them.
 */
final class TextOrigins implements TextPlaces {

	@Override
	public Origin of(EObject element, String qualifiedName) {
		INode node = placeOf(element);
		if (node == null) {
			return Origin.nowhere(qualifiedName);
		}
		LineAndColumn start = NodeModelUtils.getLineAndColumn(node, node.getOffset());
		return new Origin(qualifiedName, SnapshotFiles.pathOf(element.eResource().getURI()), node.getOffset(), node.getLength(),
				start.getLine(), start.getColumn());
	}

	private static INode placeOf(EObject element) {
		if (SpecPackage.Literals.NAMED.isInstance(element)) {
			List<INode> names = NodeModelUtils.findNodesForFeature(element, SpecPackage.Literals.NAMED__NAME);
			if (!names.isEmpty()) {
				return names.get(0);
			}
		}
		INode whole = NodeModelUtils.findActualNodeFor(element);
		if (whole != null) {
			for (ILeafNode leaf : whole.getLeafNodes()) {
				if (!leaf.isHidden()) {
					return leaf;
				}
			}
		}
		return whole;
	}
}
