/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.spec.Device;
import hullwright.spec.Hull;
import hullwright.spec.Named;
import hullwright.spec.PortHolder;
import hullwright.spec.Titled;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolDetailsProvider;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Says beside a name what it is: its title, or else the part it is made of.
 */
class OutlineDetail extends DocumentSymbolDetailsProvider {

	@Override
	public String getDetails(EObject element) {
		if (element instanceof Titled titled && titled.getTitle() != null) {
			return titled.getTitle();
		}
		if (element instanceof PortHolder || element instanceof Device) {
			return textOf(element, "type");
		}
		if (element instanceof Hull hull) {
			return hull.getOptions().isEmpty() ? "hull" : "hull with " + textOf(hull, "options");
		}
		return element instanceof Named ? "" : null;
	}

	/** As it is written, whether such a part exists or not. */
	private static String textOf(EObject element, String reference) {
		EStructuralFeature feature = element.eClass().getEStructuralFeature(reference);
		List<INode> nodes = feature == null ? List.of() : NodeModelUtils.findNodesForFeature(element, feature);
		return nodes.stream().map(NodeModelUtils::getTokenText).collect(Collectors.joining(", "));
	}
}
