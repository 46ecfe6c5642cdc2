/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.completion;

import hullwright.network.part.Connector;
import hullwright.resolve.OpenEnd;
import hullwright.spec.Backbone;
import hullwright.spec.BackboneElement;
import hullwright.spec.BackboneItem;
import hullwright.spec.CableType;
import hullwright.spec.DataNetwork;
import hullwright.spec.Drop;
import hullwright.spec.Feed;
import hullwright.spec.HullChange;
import hullwright.spec.Join;
import hullwright.spec.Leg;
import hullwright.spec.PortReference;
import hullwright.spec.WhenBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * What stands before a place in a backbone or a drop.
 *
 * @param ends   knows parts and how they lie
 * @param offset the place
 */
record WrittenSoFar(OpenEnd ends, int offset) {

	/** The connector that what is written at the place must mate with; empty if nothing says. */
	Optional<Connector> openAt(EObject place) {
		Backbone backbone = EcoreUtil2.getContainerOfType(place, Backbone.class);
		if (backbone != null) {
			List<BackboneItem> before = new ArrayList<>();
			collect(backbone.getElements(), before);
			return ends.ofBackbone(before, backbone.getCable());
		}
		for (EObject up = place; up != null; up = up.eContainer()) {
			if (up instanceof Drop drop) {
				return ofLegs(drop, drop.getFrom(), drop.getLegs());
			} else if (up instanceof Feed feed) {
				return ofLegs(feed, feed.getFrom(), feed.getLegs());
			} else if (up instanceof Join join) {
				return ofLegs(join, join.getFrom(), join.getLegs());
			}
		}
		return Optional.empty();
	}

	private Optional<Connector> ofLegs(EObject owner, PortReference from, List<Leg> legs) {
		return ends.ofLegs(from, legs.stream().filter(this::isBefore).toList(), usualCable(owner));
	}

	private static CableType usualCable(EObject owner) {
		HullChange change = EcoreUtil2.getContainerOfType(owner, HullChange.class);
		DataNetwork network = change != null ? change.getNetwork() : EcoreUtil2.getContainerOfType(owner, DataNetwork.class);
		return network == null || network.getBackbones().isEmpty() ? null : network.getBackbones().get(0).getCable();
	}

	/** Of a block of conditions that holds the place only the branch with it; of one before the place what its options bring. */
	private void collect(List<? extends BackboneElement> walk, List<BackboneItem> before) {
		for (BackboneElement element : walk) {
			if (element instanceof WhenBlock block) {
				boolean inElse = block.getOtherwise().stream().anyMatch(each -> begin(each) < offset) && !isBefore(block);
				collect(inElse ? block.getOtherwise() : block.getElements(), before);
			} else if (isBefore(element)) {
				before.add((BackboneItem) element);
			}
		}
	}

	private boolean isBefore(EObject element) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(element);
		return node != null && node.getEndOffset() < offset;
	}

	private static int begin(EObject element) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(element);
		return node == null ? Integer.MAX_VALUE : node.getOffset();
	}
}
