/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.network.Backbone;
import hullwright.network.Boat;
import hullwright.network.Drop;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.layout.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * At which place everything is drawn. What the text places nowhere goes with its neighbour: a part with the part before it on the
 * backbone, a device with the part it hangs on.
 */
final class Whereabouts {

	private final Set<String> declared;
	private final Map<String, String> placeOf = new HashMap<>();

	private Whereabouts(Boat boat) {
		declared = boat.layout().places().stream().map(Place::name).collect(Collectors.toSet());
	}

	static Whereabouts of(Boat boat) {
		Whereabouts whereabouts = new Whereabouts(boat);
		boat.networks().forEach(whereabouts::add);
		boat.devices().forEach(device -> whereabouts.put(device.name(), device.place(), Optional.empty()));
		return whereabouts;
	}

	private void add(Network network) {
		network.backbones().forEach(backbone -> add(backbone, network));
		for (Drop drop : network.drops()) {
			String last = of(drop.from().part());
			for (var leg : drop.legs()) {
				if (leg instanceof Fitting fitting) {
					put(fitting.name(), fitting.details().place(), Optional.of(last));
					last = of(fitting.name());
				}
			}
			Optional<String> next = Optional.of(last);
			drop.device().ifPresentOrElse(device -> put(device.name(), device.place(), next), () -> put(drop.name(), Optional.empty(), next));
		}
	}

	private void add(Backbone backbone, Network network) {
		List<Fitting> fittings = backbone.elements().stream().filter(Fitting.class::isInstance).map(Fitting.class::cast).toList();
		List<Optional<String>> stated = new ArrayList<>(fittings.stream().map(this::stated).toList());
		if (stated.stream().noneMatch(Optional::isPresent)) {
			stated.clear();
			fittings.forEach(fitting -> stated.add(placeOfDevicesOn(fitting, network)));
		}
		Optional<String> last = stated.stream().flatMap(Optional::stream).findFirst();
		for (int i = 0; i < fittings.size(); i++) {
			last = stated.get(i).isPresent() ? stated.get(i) : last;
			Fitting fitting = fittings.get(i);
			put(fitting.name(), last, Optional.empty());
			Optional<String> near = last;
			fitting.details().device().ifPresent(device -> put(device.name(), device.place(), near));
		}
	}

	private Optional<String> stated(Fitting fitting) {
		return fitting.details().place().or(() -> fitting.details().device().flatMap(FittedDevice::place)).filter(declared::contains);
	}

	private Optional<String> placeOfDevicesOn(Fitting fitting, Network network) {
		return network.drops().stream().filter(drop -> drop.from().part().equals(fitting.name()))
				.map(drop -> drop.device().flatMap(FittedDevice::place).orElse(null)).filter(Objects::nonNull).filter(declared::contains).findFirst();
	}

	private void put(String element, Optional<String> stated, Optional<String> otherwise) {
		placeOf.putIfAbsent(element, stated.filter(declared::contains).or(() -> otherwise).orElse(PlaceGrid.UNSTATED));
	}

	/** The name of the place at which an element is drawn. */
	String of(String element) {
		return placeOf.getOrDefault(element, PlaceGrid.UNSTATED);
	}

	/** The places at which anything is drawn. */
	Set<String> used() {
		return new TreeSet<>(placeOf.values());
	}
}
