/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.scoping;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;

import com.google.inject.Inject;

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

import hullwright.lang.imports.VisibleCatalogs;
import hullwright.spec.Catalog;
import hullwright.spec.DataNetwork;
import hullwright.spec.Device;
import hullwright.spec.DeviceType;
import hullwright.spec.Hull;
import hullwright.spec.HullChange;
import hullwright.spec.MessageUse;
import hullwright.spec.Named;
import hullwright.spec.Pgn;
import hullwright.spec.Series;
import hullwright.spec.SpecPackage;

/**
 * What a name may refer to: parts, families and messages of the catalogs that are visible, and what the own series declares.
 * Names are simple; a part's may be written with its catalog, and must be if two visible catalogs share it. A device may be
 * written with its network, and must be if two networks share its name.
 */
public class HullScopeProvider extends AbstractHullScopeProvider {

	@Inject
	private VisibleCatalogs catalogs;

	/** One scope serves all references of its kind: thousands of devices must not each build their own. */
	@Inject
	private IResourceScopeCache cache;

	@Override
	public IScope getScope(EObject context, EReference reference) {
		EClass type = reference == SpecPackage.Literals.PORT_HOLDER__TYPE
				? ReferencedKind.of(context, reference)
				: reference.getEReferenceType();
		if (isInCatalogs(type)) {
			return cached(context.eResource().getContents().get(0), type, () -> catalogScope(context, type));
		} else if (type == SpecPackage.Literals.CATALOG) {
			return simpleNames(catalogs.from(context));
		} else if (type == SpecPackage.Literals.KEY_VALUE) {
			return keyValues(context);
		} else if (type == SpecPackage.Literals.PORT) {
			DeviceType device = PortOwner.type(context, reference);
			return device == null || device.eIsProxy() ? IScope.NULLSCOPE : simpleNames(device.getPorts());
		}
		Series series = EcoreUtil2.getContainerOfType(context, Series.class);
		return series == null ? IScope.NULLSCOPE : onBoard(context, series, type);
	}

	private static boolean isInCatalogs(EClass type) {
		return type == SpecPackage.Literals.FAMILY || type == SpecPackage.Literals.MESSAGE
				|| SpecPackage.Literals.PART_TYPE.isSuperTypeOf(type);
	}

	private IScope cached(EObject owner, Object key, Supplier<IScope> scope) {
		return cache.get(Tuples.create(HullScopeProvider.class, owner, key), owner.eResource(), scope::get);
	}

	private static IScope keyValues(EObject context) {
		return context instanceof MessageUse use && use.getMessage() instanceof Pgn message
				? simpleNames(message.getKeys().stream().flatMap(key -> key.getValues().stream()).toList())
				: IScope.NULLSCOPE;
	}

	private IScope onBoard(EObject context, Series series, EClass type) {
		Hull hull = EcoreUtil2.getContainerOfType(context, Hull.class);
		EObject seenFrom = hull == null ? series : hull;
		if (type == SpecPackage.Literals.DEVICE) {
			return cached(seenFrom, type, () -> devices(series, seenFrom));
		} else if (type == SpecPackage.Literals.NAMED || type == SpecPackage.Literals.PORT_HOLDER || type == SpecPackage.Literals.BACKBONE_ITEM) {
			HullChange change = EcoreUtil2.getContainerOfType(context, HullChange.class);
			DataNetwork network = change != null ? change.getNetwork() : EcoreUtil2.getContainerOfType(context, DataNetwork.class);
			if (network == null) {
				return cached(seenFrom, type, () -> simpleNames(NamesOnBoard.besideNetworks(series, seenFrom)));
			}
			return cached(seenFrom, Tuples.pair(network, type),
					() -> simpleNames(NamesOnBoard.inNetwork(network, seenFrom).stream().filter(type::isInstance).toList()));
		}
		return cached(series, type, () -> simpleNames(declared(series, type)));
	}

	private static List<? extends Named> declared(Series series, EClass type) {
		if (type == SpecPackage.Literals.OPTION) {
			return Stream.concat(series.getOptions().stream(), series.getChoices().stream().flatMap(choice -> choice.getOptions().stream())).toList();
		} else if (type == SpecPackage.Literals.PLACE) {
			return series.getPlaces();
		} else if (type == SpecPackage.Literals.BULKHEAD) {
			return series.getBulkheads();
		} else if (type == SpecPackage.Literals.ROUTE) {
			return series.getRoutes();
		} else if (type == SpecPackage.Literals.SWITCH) {
			return series.getSwitches();
		} else if (SpecPackage.Literals.POWER_SOURCE.isSuperTypeOf(type)) {
			return series.getSources().stream().filter(type::isInstance).toList();
		} else if (type == SpecPackage.Literals.DATA_NETWORK) {
			return series.getNetworks();
		}
		throw new IllegalStateException("no names are known for references to " + type.getName());
	}

	/** All devices on board: by simple name where that says which, and by network and name. */
	private static IScope devices(Series series, EObject seenFrom) {
		Map<String, List<IEObjectDescription>> bySimpleName = new LinkedHashMap<>();
		List<IEObjectDescription> visible = new ArrayList<>();
		for (Named named : NamesOnBoard.besideNetworks(series, seenFrom)) {
			if (named instanceof Device && named.getName() != null) {
				bySimpleName.computeIfAbsent(named.getName(), name -> new ArrayList<>()).add(described(named));
			}
		}
		for (DataNetwork network : series.getNetworks()) {
			for (Named named : NamesOnBoard.inNetwork(network, seenFrom)) {
				if (named instanceof Device) {
					bySimpleName.computeIfAbsent(named.getName(), name -> new ArrayList<>()).add(described(named));
					visible.add(EObjectDescription.create(QualifiedName.create(String.valueOf(network.getName()), named.getName()), named));
				}
			}
		}
		bySimpleName.values().stream().filter(homes -> homes.size() == 1).forEach(visible::addAll);
		return MapBasedScope.createScope(IScope.NULLSCOPE, visible);
	}

	private static IEObjectDescription described(Named element) {
		return EObjectDescription.create(QualifiedName.create(element.getName()), element);
	}

	private static IScope simpleNames(List<? extends Named> elements) {
		Map<QualifiedName, IEObjectDescription> found = new LinkedHashMap<>();
		for (Named element : elements) {
			if (element.getName() != null) {
				found.putIfAbsent(QualifiedName.create(element.getName()), described(element));
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
					bySimpleName.computeIfAbsent(entry.getName(), name -> new ArrayList<>()).add(described(entry));
					visible.add(EObjectDescription.create(QualifiedName.create(String.valueOf(catalog.getName()), entry.getName()), entry));
				}
			}
		}
		bySimpleName.values().stream().filter(homes -> homes.size() == 1).forEach(visible::addAll);
		return MapBasedScope.createScope(IScope.NULLSCOPE, visible);
	}

	private static List<? extends Named> entries(Catalog catalog, EClass type) {
		if (type == SpecPackage.Literals.FAMILY) {
			return catalog.getFamilies();
		} else if (type == SpecPackage.Literals.MESSAGE) {
			return catalog.getMessages();
		}
		return catalog.getParts().stream().filter(type::isInstance).toList();
	}
}
