/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Origin;
import hullwright.spec.SpecFile;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Finds what stands at a place of the texts that were read. The caller holds the lock that guards reading.
 */
record ElementsInText(ReadProject project) {

	/** What stands at a place, or the smallest thing around it of a kind. */
	<T extends EObject> Optional<T> at(Origin place, Class<T> kind) {
		SpecFile file = project.files().get(place.file());
		if (file == null) {
			return Optional.empty();
		}
		ILeafNode leaf = NodeModelUtils.findLeafNodeAtOffset(NodeModelUtils.findActualNodeFor(file).getRootNode(), place.offset());
		EObject found = leaf == null ? null : NodeModelUtils.findActualSemanticObjectFor(leaf);
		return found == null ? Optional.empty() : Optional.ofNullable(EcoreUtil2.getContainerOfType(found, kind));
	}
}
