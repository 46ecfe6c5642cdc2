/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Finds the braces of an element that has a block.
 */
final class BlockBraces {

	private BlockBraces() {
	}

	/** The first opening brace of an element. */
	static Optional<ILeafNode> open(EObject element) {
		for (ILeafNode leaf : NodeModelUtils.findActualNodeFor(element).getLeafNodes()) {
			if (!leaf.isHidden() && leaf.getText().equals("{")) {
				return Optional.of(leaf);
			}
		}
		return Optional.empty();
	}

	/** The last closing brace of an element. */
	static Optional<ILeafNode> close(EObject element) {
		ILeafNode found = null;
		for (ILeafNode leaf : NodeModelUtils.findActualNodeFor(element).getLeafNodes()) {
			if (!leaf.isHidden() && leaf.getText().equals("}")) {
				found = leaf;
			}
		}
		return Optional.ofNullable(found);
	}
}
