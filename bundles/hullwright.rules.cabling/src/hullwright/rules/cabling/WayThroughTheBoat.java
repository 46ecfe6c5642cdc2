/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.Boat;
import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.FittedDevice;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.layout.Bulkhead;
import hullwright.network.layout.Route;
import hullwright.network.layout.Way;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A backbone, a drop or a feed on its way through the boat, from one place to the next.
 *
 * @param label what people call it
 * @param origin it, and its place in the text
 * @param from where the part is that it starts at, if it starts at one and the text says
 * @param elements what it is made of
 * @param to where the device is that it ends at, if it ends at one and the text says
 */
record WayThroughTheBoat(String label, Origin origin, Optional<String> from, List<Element> elements, Optional<String> to) {

	/** Those of a boat, in the order backbones, drops, feeds of each network. */
	static List<WayThroughTheBoat> of(Boat boat) {
		List<WayThroughTheBoat> ways = new ArrayList<>();
		for (Network network : boat.networks()) {
			Map<String, Optional<String>> places = new HashMap<>();
			Stream.concat(network.backbones().stream().flatMap(each -> each.elements().stream()), network.drops().stream().flatMap(each -> each.legs().stream()))
					.filter(Fitting.class::isInstance).map(Fitting.class::cast).forEach(each -> places.putIfAbsent(each.name(), each.details().place()));
			network.backbones().forEach(each -> ways.add(new WayThroughTheBoat("the backbone of " + network.origin().simpleName(), each.origin(),
					Optional.empty(), each.elements(), Optional.empty())));
			network.drops().forEach(each -> ways.add(new WayThroughTheBoat("the drop " + each.device().map(device -> "to ").orElse("") + each.origin().simpleName(),
					each.origin(), places.getOrDefault(each.from().part(), Optional.empty()), each.legs(), each.device().flatMap(FittedDevice::place))));
			network.feeds().forEach(each -> ways.add(new WayThroughTheBoat("the feed " + each.origin().simpleName(), each.origin(),
					places.getOrDefault(each.from().part(), Optional.empty()), each.legs(), Optional.empty())));
		}
		return ways;
	}

	/** The fittings that lead through a wall. */
	List<Fitting> passages(Bulkhead wall) {
		return elements.stream().filter(Fitting.class::isInstance).map(Fitting.class::cast)
				.filter(each -> each.details().bulkhead().filter(wall.name()::equals).isPresent()).toList();
	}

	/**
	 * Where it goes through a wall, if it is sure that it does: a cable takes a named route that does, or two neighbours lie on both
	 * sides of it and no route is named that avoids it.
	 */
	Optional<Origin> through(Bulkhead wall, List<Route> routes) {
		Optional<String> at = from;
		boolean onNamedRoute = false;
		for (Element element : elements) {
			Optional<String> route = element instanceof CableRun cable ? cable.way().flatMap(Way::route) : Optional.empty();
			if (routes.stream().anyMatch(each -> route.filter(each.name()::equals).isPresent() && each.through().contains(wall.name()))) {
				return Optional.of(element.origin());
			}
			onNamedRoute |= route.isPresent();
			Optional<String> place = element instanceof Fitting fitting ? fitting.details().place() : Optional.empty();
			if (place.isPresent()) {
				if (!onNamedRoute && divides(wall, routes, at, place)) {
					return Optional.of(element.origin());
				}
				at = place;
				onNamedRoute = false;
			}
		}
		return !onNamedRoute && divides(wall, routes, at, to) ? Optional.of(origin) : Optional.empty();
	}

	private static boolean divides(Bulkhead wall, List<Route> routes, Optional<String> one, Optional<String> other) {
		if (one.isEmpty() || other.isEmpty() || one.equals(other)) {
			return false;
		}
		Set<String> sides = Set.of(one.get(), other.get());
		return sides.equals(Set.of(wall.between(), wall.and()))
				&& routes.stream().noneMatch(route -> sides.contains(route.from()) && sides.contains(route.to()) && !route.through().contains(wall.name()));
	}
}
