/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the things of a boat stand in the texts.
 */
public final class PlacesInText {

	private final Map<String, Origin> places = new HashMap<>();
	private final Origin boat;

	/** The places of all that a boat has. */
	public PlacesInText(Boat boat) {
		this.boat = boat.origin();
		boat.networks().forEach(this::add);
		boat.devices().forEach(this::add);
		boat.serialLines().forEach(each -> places.put(each.name(), each.origin()));
		boat.wirelessHops().forEach(each -> places.put(each.name(), each.origin()));
		boat.power().banks().forEach(each -> places.put(each.name(), each.origin()));
		boat.power().converters().forEach(each -> places.put(each.name(), each.origin()));
		boat.power().supplies().forEach(each -> places.put(each.name(), each.origin()));
	}

	private void add(Network network) {
		places.put(network.name(), network.origin());
		network.backbones().forEach(each -> add(each.elements()));
		for (Drop drop : network.drops()) {
			places.put(drop.name(), drop.origin());
			add(drop.legs());
			drop.device().ifPresent(this::add);
		}
		network.feeds().forEach(each -> {
			places.put(each.name(), each.origin());
			add(each.legs());
		});
		network.joins().forEach(each -> {
			places.put(each.name(), each.origin());
			add(each.legs());
		});
	}

	private void add(List<Element> elements) {
		for (Element element : elements) {
			places.put(element.name(), element.origin());
			if (element instanceof Fitting fitting) {
				fitting.details().device().ifPresent(this::add);
			}
		}
	}

	private void add(FittedDevice device) {
		places.put(device.name(), device.origin());
	}

	/** The place of a thing by its qualified name; that of the boat if the texts do not name it. */
	public Origin of(String name) {
		return places.getOrDefault(name, boat);
	}
}
