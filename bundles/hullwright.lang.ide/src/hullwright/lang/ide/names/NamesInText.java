/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import hullwright.spec.Catalog;
import hullwright.spec.Named;
import hullwright.spec.Parameter;
import hullwright.spec.Series;
import hullwright.spec.SpecPackage;
import hullwright.spec.Waiver;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.linking.ILinkingService;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.resource.XtextResource;

/**
 * All names that stand in a text, in its order: declarations, references and what waivers mention. They are read from the node
 * model, so that a name is found as it is written and where it is written.
 */
final class NamesInText {

	private final XtextResource resource;
	private final ILinkingService linking;

	NamesInText(XtextResource resource) {
		this.resource = resource;
		this.linking = resource.getResourceServiceProvider().get(ILinkingService.class);
	}

	/** The name that an offset lies in or behind. */
	Optional<NameUse> at(int offset) {
		IParseResult read = resource.getParseResult();
		return read == null ? Optional.empty() : Stream.of(offset, offset - 1)
				.map(place -> NodeModelUtils.findLeafNodeAtOffset(read.getRootNode(), place))
				.filter(leaf -> leaf != null && !leaf.isHidden())
				.flatMap(leaf -> around(leaf))
				.filter(use -> use.offset() <= offset && offset <= use.end())
				.max(Comparator.comparingInt(NameUse::offset));
	}

	private Stream<NameUse> around(ILeafNode leaf) {
		List<NameUse> uses = new ArrayList<>();
		for (INode node = leaf; node != null; node = node.getParent()) {
			add(node, uses);
		}
		return uses.stream();
	}

	/** All of them. */
	List<NameUse> all() {
		List<NameUse> uses = new ArrayList<>();
		IParseResult read = resource.getParseResult();
		if (read != null) {
			read.getRootNode().getAsTreeIterable().forEach(node -> add(node, uses));
		}
		return uses;
	}

	private void add(INode node, List<NameUse> uses) {
		EObject grammar = node.getGrammarElement();
		if (grammar instanceof CrossReference reference) {
			addReference(reference, node, uses);
		} else if (grammar instanceof RuleCall && grammar.eContainer() instanceof Assignment assigned) {
			EObject element = node.getSemanticElement();
			if ("name".equals(assigned.getFeature()) && element instanceof Named && !(element instanceof Parameter)) {
				uses.add(new NameUse(node.getOffset(), NodeModelUtils.getTokenText(node), true, () -> element));
			} else if ("element".equals(assigned.getFeature()) && element instanceof Waiver waiver) {
				uses.addAll(WaivedName.in(waiver, node.getOffset(), NodeModelUtils.getTokenText(node)));
			}
		}
	}

	private void addReference(CrossReference grammar, INode node, List<NameUse> uses) {
		Supplier<EObject> target = () -> target(grammar, node);
		String written = NodeModelUtils.getTokenText(node);
		int point = written.indexOf('.');
		if (point >= 0) {
			uses.add(new NameUse(node.getOffset(), written.substring(0, point), false,
					() -> owner(node.getSemanticElement(), written.substring(0, point), target.get())));
		}
		uses.add(new NameUse(node.getOffset() + point + 1, written.substring(point + 1), false, target));
	}

	private EObject target(CrossReference grammar, INode node) {
		EObject from = NodeModelUtils.findActualSemanticObjectFor(node);
		EReference reference = GrammarUtil.getReference(grammar, from.eClass());
		return reference == null ? null : linking.getLinkedObjects(from, reference, node).stream().findFirst().orElse(null);
	}

	/** What stands before the point: the catalog of a part, or the network of a device. */
	private static EObject owner(EObject from, String name, EObject target) {
		Catalog catalog = target == null ? null : EcoreUtil2.getContainerOfType(target, Catalog.class);
		if (catalog != null) {
			return catalog;
		}
		Series series = EcoreUtil2.getContainerOfType(from, Series.class);
		return series == null ? null : series.getNetworks().stream().filter(each -> name.equals(each.getName())).findFirst().orElse(null);
	}

	/** What an element is called; null if it has no name of its own. */
	static String nameOf(EObject element) {
		return element instanceof Named named ? named.getName() : null;
	}

	/** The node of an element's name. */
	static Optional<INode> declaration(EObject element) {
		return element instanceof Named
				? NodeModelUtils.findNodesForFeature(element, SpecPackage.Literals.NAMED__NAME).stream().findFirst()
				: Optional.empty();
	}
}
