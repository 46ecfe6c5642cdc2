/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.Backbone;
import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Origin;
import hullwright.network.part.Cable;
import hullwright.network.part.Part;
import hullwright.quantity.Length;
import hullwright.spec.BackboneCable;
import hullwright.spec.BackboneElement;
import hullwright.spec.BackboneItem;
import hullwright.spec.BackbonePart;
import hullwright.spec.Named;
import hullwright.spec.WhenBlock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A backbone with everything that some boat may have in it.
 *
 * @param name the qualified name
 * @param elements the elements in physical order, each with when it is fitted
 * @param origin its place in the text
 */
record BackbonePlan(String name, List<WhenFitted<Element>> elements, Origin origin) {

	/** The backbone of a boat: what is left out closes the gap, what stays is laid to mate. */
	Backbone on(Set<String> options) {
		List<Element> fitted = new ArrayList<>(elements.size());
		for (WhenFitted<Element> element : elements) {
			if (element.on(options)) {
				fitted.add(element.item());
			}
		}
		return new Backbone(name, Laying.lay(fitted, Optional.empty(), Optional.empty()), origin);
	}

	/** Copies one backbone out of the spec. */
	static final class Copy {

		private final CatalogParts parts;
		private final TextPlaces places;
		private final String network;
		private final Optional<Cable> usualCable;
		private final List<WhenFitted<Element>> elements = new ArrayList<>();
		private final List<BackboneItem> walk = new ArrayList<>();
		private final Map<String, Integer> derivedNames = new HashMap<>();

		Copy(CatalogParts parts, TextPlaces places, String network, Optional<Cable> usualCable) {
			this.parts = parts;
			this.places = places;
			this.network = network;
			this.usualCable = usualCable;
		}

		BackbonePlan of(hullwright.spec.Backbone backbone, String name) {
			flatten(backbone);
			for (BackboneElement element : backbone.getElements()) {
				if (element instanceof WhenBlock block) {
					FittedWhen condition = FittedWhen.of(block.getCondition());
					block.getElements().forEach(item -> add(item, condition, null));
					block.getOtherwise().forEach(item -> add(item, FittedWhen.ALWAYS, condition));
				} else {
					add((BackboneItem) element, FittedWhen.ALWAYS, null);
				}
			}
			return new BackbonePlan(name, List.copyOf(elements), places.of(backbone, name));
		}

		private void flatten(hullwright.spec.Backbone backbone) {
			for (BackboneElement element : backbone.getElements()) {
				if (element instanceof WhenBlock block) {
					walk.addAll(block.getElements());
					walk.addAll(block.getOtherwise());
				} else {
					walk.add((BackboneItem) element);
				}
			}
		}

		private void add(BackboneItem item, FittedWhen block, FittedWhen unless) {
			Optional<? extends Element> element = item instanceof BackboneCable cable ? Optional.of(run(cable)) : fitting((BackbonePart) item);
			FittedWhen when = block.and(FittedWhen.of(item.getCondition()));
			element.ifPresent(fitted -> elements.add(new WhenFitted<>(fitted, when, unless)));
		}

		private CableRun run(BackboneCable cable) {
			String name = network + "." + (cable.getName() == null ? derivedName(cable) : cable.getName());
			Length length = cable.getLength() == null ? Length.ZERO : cable.getLength();
			return new CableRun(name, parts.cable(cable.getType()).or(() -> usualCable), length, false, places.of(cable, name));
		}

		/** A cable without a name is known by the parts it can run between, whichever of them a boat has. */
		private String derivedName(BackboneCable cable) {
			List<BackboneItem> reachable = new ArrayList<>(walk);
			reachable.removeAll(otherBranch(cable));
			int at = reachable.indexOf(cable);
			String name = nearestPart(reachable.subList(0, at), true).orElse("start") + "-to-"
					+ nearestPart(reachable.subList(at + 1, reachable.size()), false).orElse("end");
			int count = derivedNames.merge(name, 1, Integer::sum);
			return count == 1 ? name : name + "-" + count;
		}

		/** What is fitted only where this cable is not. */
		private static List<BackboneItem> otherBranch(BackboneCable cable) {
			if (cable.eContainer() instanceof WhenBlock block) {
				return block.getElements().contains(cable) ? block.getOtherwise() : block.getElements();
			}
			return List.of();
		}

		private static Optional<String> nearestPart(List<BackboneItem> items, boolean fromTheBack) {
			return items.stream()
					.filter(BackbonePart.class::isInstance)
					.map(Named::getName)
					.filter(name -> name != null)
					.reduce((earlier, later) -> fromTheBack ? later : earlier);
		}

		private Optional<Fitting> fitting(BackbonePart part) {
			Optional<Part> data = parts.of(part.getType());
			String name = network + "." + part.getName();
			List<String> feeds = part.getFeed().stream().map(Named::getName).toList();
			return data.map(type -> new Fitting(name, type, false, place(part.getPlace()), CatalogParts.text(part.getLabel()), feeds,
					part.isEarthsShield(), behind(part), places.of(part, name)));
		}

		private Optional<FittedDevice> behind(BackbonePart part) {
			return Optional.ofNullable(part.getBehind()).flatMap(device -> DropPlan.device(device, parts, places, network));
		}
	}

	static Optional<String> place(hullwright.spec.Place place) {
		return Optional.ofNullable(place).map(Named::getName);
	}
}
