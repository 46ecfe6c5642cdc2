/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.completion;

import hullwright.network.part.Adapter;
import hullwright.network.part.Part;
import hullwright.resolve.OpenEnd;
import hullwright.spec.AdapterType;
import hullwright.spec.CableType;
import hullwright.spec.CapType;
import hullwright.spec.ChangeItem;
import hullwright.spec.CordType;
import hullwright.spec.DeviceType;
import hullwright.spec.Drop;
import hullwright.spec.Feed;
import hullwright.spec.FuseType;
import hullwright.spec.PartType;
import hullwright.spec.PortHolder;
import hullwright.spec.SpecPackage;
import hullwright.spec.TeeType;
import hullwright.spec.Titled;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.documentation.IEObjectDocumentationProvider;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.scoping.IScope;

/**
 * The names that a reference may be given, the parts among them only where they go on.
 */
final class NamesOnOffer {

	private static final int USUAL = 500;
	private static final int THROUGH_ADAPTER = 450;
	private static final int MISFIT = 400;
	/** Declarations of more than so many are not written out. */
	private static final int MOST_DECLARATIONS = 400;

	private final IScope scope;
	private final IScope allParts;
	private final EClass kind;
	private final IEObjectDocumentationProvider declarations;
	private final boolean portWanted;
	private final OpenEnd ends = new OpenEnd();

	NamesOnOffer(IScope scope, IScope allParts, EClass kind, boolean portWanted, IEObjectDocumentationProvider declarations) {
		this.scope = scope;
		this.allParts = allParts;
		this.kind = kind;
		this.portWanted = portWanted;
		this.declarations = declarations;
	}

	/** What may stand at a place that holds a reference. */
	List<Candidate> at(EObject place, EReference reference, int offset, String prefix) {
		List<IEObjectDescription> described = described(place, prefix);
		if (!isFitted(place, reference)) {
			return described.stream().map(each -> candidate(each, described.size())).toList();
		}
		List<Adapter> adapters = new ArrayList<>();
		allParts.getAllElements().forEach(each -> record(each).filter(Adapter.class::isInstance).map(Adapter.class::cast).ifPresent(adapters::add));
		return fitting(described, new MatingParts(new WrittenSoFar(ends, offset).openAt(place), adapters));
	}

	/** Each once, by its shortest name, unless the longer one has been begun. */
	private List<IEObjectDescription> described(EObject place, String prefix) {
		List<IEObjectDescription> described = new ArrayList<>();
		Set<EObject> simple = new HashSet<>();
		for (IEObjectDescription each : scope.getAllElements()) {
			if (kind.isSuperTypeOf(each.getEClass()) && isOfUse(each, place) && each.getName().getSegmentCount() == 1) {
				simple.add(each.getEObjectOrProxy());
				described.add(each);
			}
		}
		for (IEObjectDescription each : scope.getAllElements()) {
			if (kind.isSuperTypeOf(each.getEClass()) && isOfUse(each, place) && each.getName().getSegmentCount() > 1
					&& (!simple.contains(each.getEObjectOrProxy()) || prefix.startsWith(each.getName().getFirstSegment() + "."))) {
				described.add(each);
			}
		}
		return described;
	}

	/** A port is one of a tee. A reference to any part may stand in a drop, but some kinds of parts may not. */
	private boolean isOfUse(IEObjectDescription each, EObject place) {
		if (portWanted) {
			return each.getEObjectOrProxy() instanceof PortHolder holder && holder.getType() instanceof TeeType;
		}
		if (kind != SpecPackage.Literals.PART_TYPE || EcoreUtil2.getContainerOfType(place, ChangeItem.class) != null) {
			return true;
		}
		EObject part = each.getEObjectOrProxy();
		boolean inFeed = EcoreUtil2.getContainerOfType(place, Feed.class) != null;
		return !(part instanceof DeviceType || part instanceof CableType || part instanceof FuseType || part instanceof CapType)
				&& (inFeed || !(part instanceof CordType));
	}

	private static boolean isFitted(EObject place, EReference reference) {
		return reference == SpecPackage.Literals.PORT_HOLDER__TYPE
				|| reference == SpecPackage.Literals.RUN__TYPE
				|| reference == SpecPackage.Literals.DEVICE__TYPE && EcoreUtil2.getContainerOfType(place, Drop.class) != null;
	}

	private List<Candidate> fitting(List<IEObjectDescription> described, MatingParts mating) {
		List<Candidate> fitting = new ArrayList<>();
		List<Candidate> others = new ArrayList<>();
		for (IEObjectDescription each : described) {
			Part part = record(each).orElse(null);
			if (part == null || mating.goesOn(part)) {
				fitting.add(candidate(each, described.size()));
			} else {
				Optional<Adapter> adapter = mating.adapterFor(part);
				String needs = adapter.map(found -> "needs adapter " + found.identity().name() + " to ").orElse("does not mate with ") + mating.open().orElseThrow();
				Candidate candidate = candidate(each, described.size());
				others.add(new Candidate(candidate.text(), needs + "; " + candidate.detail(), candidate.documentation(),
						adapter.isPresent() ? THROUGH_ADAPTER : MISFIT));
			}
		}
		if (fitting.isEmpty()) {
			return others.stream().anyMatch(each -> each.weight() == THROUGH_ADAPTER)
					? others.stream().filter(each -> each.weight() == THROUGH_ADAPTER).toList() : others;
		}
		return fitting;
	}

	private Optional<Part> record(IEObjectDescription each) {
		return each.getEObjectOrProxy() instanceof PartType type && !type.eIsProxy() && (kind.isInstance(type) || type instanceof AdapterType)
				? ends.part(type) : Optional.empty();
	}

	private Candidate candidate(IEObjectDescription each, int count) {
		EObject element = each.getEObjectOrProxy();
		String detail = element instanceof PartType type ? record(each).map(part -> PartDetail.of(type, part)).orElse("")
				: element instanceof PortHolder holder && holder.getType() != null && holder.getType().getName() != null ? holder.getType().getName()
				: element instanceof Titled titled && titled.getTitle() != null ? titled.getTitle() : "";
		return new Candidate(each.getName().toString("."), detail, count > MOST_DECLARATIONS ? null : declarations.getDocumentation(element), USUAL);
	}
}
