/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.scoping;

import com.google.inject.Inject;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.spec.BackbonePart;
import hullwright.spec.Catalog;
import hullwright.spec.DataNetwork;
import hullwright.spec.Device;
import hullwright.spec.HullChange;
import hullwright.spec.Named;
import hullwright.spec.Series;
import hullwright.spec.SpecPackage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.naming.QualifiedName;
import org.eclipse.xtext.resource.EObjectDescription;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.scoping.IScope;
import org.eclipse.xtext.scoping.impl.MapBasedScope;
import org.eclipse.xtext.util.IResourceScopeCache;
import org.eclipse.xtext.util.Tuples;

/**
 * Which names may stand where: parts and families come from the visible catalogs, everything else from the series that the
 * reference stands in. A simple name that two catalogs share is not offered; the name with its catalog is.
 */
public class HullScopeProvider extends AbstractHullScopeProvider {

	@Inject
	private VisibleCatalogs catalogs;

	/** One scope serves all references of its kind: thousands of devices must not each build their own. */
	@Inject
	private IResourceScopeCache cache;

	@Override
	public IScope getScope(EObject context, EReference reference) {
		EClass type = reference == SpecPackage.Literals.BACKBONE_PART__TYPE
				? ReferencedKind.of(context, reference)
				: reference.getEReferenceType();
		if (type == SpecPackage.Literals.FAMILY || SpecPackage.Literals.PART_TYPE.isSuperTypeOf(type)) {
			return cached(context.eResource().getContents().get(0), type, () -> catalogScope(context, type));
		}
		EObject owner = ownerOfNames(context, type);
		return owner == null ? IScope.NULLSCOPE : cached(owner, type, () -> simpleNames(namedIn(owner, type)));
	}

	private IScope cached(EObject owner, EClass type, Supplier<IScope> scope) {
		return cache.get(Tuples.create(HullScopeProvider.class, owner, type), owner.eResource(), scope::get);
	}

	private static EObject ownerOfNames(EObject context, EClass type) {
		if (type == SpecPackage.Literals.BACKBONE_PART || type == SpecPackage.Literals.DEVICE) {
			HullChange change = EcoreUtil2.getContainerOfType(context, HullChange.class);
			return change != null ? reachable(change.getNetwork()) : EcoreUtil2.getContainerOfType(context, DataNetwork.class);
		}
		return EcoreUtil2.getContainerOfType(context, Series.class);
	}

	private static DataNetwork reachable(DataNetwork network) {
		return network == null || network.eIsProxy() ? null : network;
	}

	private static List<? extends Named> namedIn(EObject owner, EClass type) {
		if (type == SpecPackage.Literals.BACKBONE_PART) {
			return EcoreUtil2.getAllContentsOfType(owner, BackbonePart.class);
		} else if (type == SpecPackage.Literals.DEVICE) {
			return EcoreUtil2.getAllContentsOfType(owner, Device.class);
		}
		Series series = (Series) owner;
		if (type == SpecPackage.Literals.OPTION) {
			List<Named> options = new ArrayList<>(series.getOptions());
			series.getChoices().forEach(choice -> options.addAll(choice.getOptions()));
			return options;
		} else if (type == SpecPackage.Literals.PLACE) {
			return series.getPlaces();
		} else if (type == SpecPackage.Literals.SUPPLY_SOURCE) {
			return series.getSupplies();
		} else if (type == SpecPackage.Literals.DATA_NETWORK) {
			return series.getNetworks();
		}
		throw new IllegalStateException("no names are known for references to " + type.getName());
	}

	private static IScope simpleNames(List<? extends Named> elements) {
		Map<QualifiedName, IEObjectDescription> found = new LinkedHashMap<>();
		for (Named element : elements) {
			if (element.getName() != null) {
				QualifiedName name = QualifiedName.create(element.getName());
				found.putIfAbsent(name, EObjectDescription.create(name, element));
			}
		}
		return MapBasedScope.createScope(IScope.NULLSCOPE, found.values());
	}

	private IScope catalogScope(EObject context, EClass type) {
		Map<String, List<IEObjectDescription>> bySimpleName = new HashMap<>();
		Collection<IEObjectDescription> visible = new ArrayList<>();
		for (Catalog catalog : catalogs.from(context)) {
			for (Named entry : entries(catalog, type)) {
				if (entry.getName() != null) {
					QualifiedName simple = QualifiedName.create(entry.getName());
					bySimpleName.computeIfAbsent(entry.getName(), name -> new ArrayList<>()).add(EObjectDescription.create(simple, entry));
					visible.add(EObjectDescription.create(QualifiedName.create(String.valueOf(catalog.getName()), entry.getName()), entry));
				}
			}
		}
		bySimpleName.values().stream().filter(homes -> homes.size() == 1).forEach(visible::addAll);
		return MapBasedScope.createScope(IScope.NULLSCOPE, visible);
	}

	private static List<? extends Named> entries(Catalog catalog, EClass type) {
		return type == SpecPackage.Literals.FAMILY
				? catalog.getFamilies()
				: catalog.getParts().stream().filter(part -> type.isInstance(part)).toList();
	}
}
