/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.scoping;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;

import hullwright.spec.AddElement;
import hullwright.spec.AddItem;
import hullwright.spec.AddToWalk;
import hullwright.spec.Backbone;
import hullwright.spec.DataNetwork;
import hullwright.spec.FreeDevice;
import hullwright.spec.Hull;
import hullwright.spec.HullChange;
import hullwright.spec.Named;
import hullwright.spec.Series;
import hullwright.spec.SeriesItem;
import hullwright.spec.WhenItems;

/**
 * The names that things on board have, by where they can be said without a prefix.
 */
public final class NamesOnBoard {

	private NamesOnBoard() {
	}

	/** Everything named in a network: parts and cables of its backbones, devices, feeds, parts of drops. */
	public static List<Named> of(DataNetwork network) {
		return below(network);
	}

	/** What an item beside the networks names: itself, or what its block of conditions holds. */
	public static List<Named> of(SeriesItem item) {
		if (item instanceof FreeDevice free) {
			return free.getDevice() == null ? List.of() : List.of(free.getDevice());
		} else if (item instanceof WhenItems block) {
			return Stream.concat(block.getItems().stream(), block.getOtherwise().stream()).flatMap(inner -> of(inner).stream()).toList();
		}
		return item instanceof Named named ? List.of(named) : List.of();
	}

	/** What the series has beside its networks, seen from an element: with what its hull adds, if it stands in a hull. */
	public static List<Named> besideNetworks(Series series, EObject from) {
		List<Named> names = new ArrayList<>();
		series.getItems().forEach(item -> names.addAll(of(item)));
		additions(from, AddItem.class).forEach(added -> names.addAll(of(added.getItem())));
		return names;
	}

	/** What a network has, seen from an element: with what its hull adds there, if it stands in a hull. */
	public static List<Named> inNetwork(DataNetwork network, EObject from) {
		List<Named> names = new ArrayList<>(of(network));
		additions(from, AddElement.class).filter(added -> added.getNetwork() == network).forEach(added -> names.addAll(below(added)));
		additions(from, AddToWalk.class).filter(added -> added.getNetwork() == network).forEach(added -> names.addAll(below(added)));
		return names;
	}

	private static <C extends HullChange> Stream<C> additions(EObject from, Class<C> kind) {
		Hull hull = EcoreUtil2.getContainerOfType(from, Hull.class);
		return hull == null ? Stream.empty() : hull.getChanges().stream().filter(kind::isInstance).map(kind::cast);
	}

	private static List<Named> below(EObject owner) {
		List<Named> names = new ArrayList<>();
		for (TreeIterator<EObject> contents = owner.eAllContents(); contents.hasNext();) {
			if (contents.next() instanceof Named named && named.getName() != null && !(named instanceof Backbone)) {
				names.add(named);
			}
		}
		return names;
	}
}
