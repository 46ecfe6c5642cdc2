/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import hullwright.network.Origin;
import hullwright.network.layout.Bulkhead;
import hullwright.network.layout.Layout;
import hullwright.network.layout.Place;
import hullwright.network.layout.Route;
import hullwright.spec.Named;
import hullwright.spec.Series;

/**
 * Copies the places of a series and the ways between them.
 */
final class LayoutPlan {

	private LayoutPlan() {
	}

	static Layout of(Series series, Copying copying) {
		List<Place> places = series.getPlaces().stream().map(place -> new Place(place.getName(), Copying.text(place.getTitle()),
				place.getZones().stream().map(CatalogParts::zone).collect(Collectors.toSet()), place.isNearCompass(),
				Optional.ofNullable(place.getAbove()).map(Named::getName), origin(place, copying))).toList();
		List<Bulkhead> bulkheads = series.getBulkheads().stream().map(wall -> new Bulkhead(wall.getName(), Copying.text(wall.getTitle()),
				wall.getBetween().getName(), wall.getAnd().getName(), wall.isWatertight(), origin(wall, copying))).toList();
		List<Route> routes = series.getRoutes().stream().map(route -> new Route(route.getName(), Copying.text(route.getTitle()),
				route.getFrom().getName(), route.getTo().getName(), route.getLength(), Copying.names(route.getThrough()), origin(route, copying))).toList();
		return new Layout(places, bulkheads, routes);
	}

	private static Origin origin(Named named, Copying copying) {
		return copying.places().of(named, copying.names().ofOwn(named.getName()));
	}
}
