/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.BackboneCable;
import hullwright.spec.Device;
import hullwright.spec.Drop;
import hullwright.spec.FreeDevice;
import hullwright.spec.Run;
import hullwright.spec.SpecPackage;
import hullwright.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Changes what an element is made of: its parts, its lengths, or whether it is there at all.
 */
public final class ElementText {

	private final PartNames parts;

	/** Edits of elements in a text that was parsed without errors. */
	public ElementText(PartNames parts) {
		this.parts = parts;
	}

	/** Names another part where an element names one; empty if it does not name that part. */
	public Optional<TextEdit> replacePart(EObject element, String oldCatalog, String old, String catalog, String part) {
		for (EObject each : within(element)) {
			for (EReference reference : each.eClass().getEAllReferences()) {
				if (!reference.isContainment() && !reference.isMany() && PartNames.is(each.eGet(reference), oldCatalog, old)) {
					for (INode node : NodeModelUtils.findNodesForFeature(each, reference)) {
						return Optional.of(new TextEdit(node.getOffset(), node.getLength(), parts.at(element, catalog, part)));
					}
				}
			}
		}
		return cableOf(element, catalog, part);
	}

	/** A cable that is that of the backbone and says nothing of its kind gets a kind of its own. */
	private Optional<TextEdit> cableOf(EObject element, String catalog, String part) {
		return element instanceof Run run && run.getType() == null
				? NodeModelUtils.findNodesForFeature(run, SpecPackage.Literals.RUN__LENGTH).stream().findFirst()
						.map(length -> new TextEdit(length.getEndOffset(), 0, " of " + parts.at(element, catalog, part)))
				: Optional.empty();
	}

	/** Fits another length where an element is made of a cable of this length; empty if it is not. */
	public Optional<TextEdit> setLength(EObject element, Length old, Length length) {
		for (EObject each : within(element)) {
			if (each instanceof Run run && old.equals(run.getLength())) {
				for (INode node : NodeModelUtils.findNodesForFeature(run, SpecPackage.Literals.RUN__LENGTH)) {
					return Optional.of(new TextEdit(node.getOffset(), node.getLength(), length.toString()));
				}
			}
		}
		return Optional.empty();
	}

	/** Removes an element; a device goes with the drop that leads to it, a piece of a drop with its comma. */
	public TextEdit remove(EObject element) {
		EObject whole = whole(element);
		return whole.eContainingFeature().getName().equals("legs") ? DropText.without(whole) : new TextLines(element).without(whole);
	}

	private static EObject whole(EObject element) {
		return element instanceof Device && (element.eContainer() instanceof Drop || element.eContainer() instanceof FreeDevice)
				? element.eContainer()
				: element;
	}

	/** The element, what it is made of, and the drop that leads to it if it is a device. */
	private static List<EObject> within(EObject element) {
		List<EObject> all = new ArrayList<>();
		all.add(element);
		all.addAll(EcoreUtil2.eAllContentsAsList(element));
		if (!(element instanceof BackboneCable) && whole(element) != element) {
			all.addAll(EcoreUtil2.eAllContentsAsList(whole(element)));
		}
		return all;
	}
}
