/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.layout;

import java.util.List;

/**
 * The boat as a place to put things.
 *
 * @param places the places, in the order of the text: bow to stern
 * @param bulkheads what divides them
 * @param routes the ways between them
 */
public record Layout(List<Place> places, List<Bulkhead> bulkheads, List<Route> routes) {

	/** Nothing is said. */
	public static final Layout UNSTATED = new Layout(List.of(), List.of(), List.of());

	public Layout {
		places = List.copyOf(places);
		bulkheads = List.copyOf(bulkheads);
		routes = List.copyOf(routes);
	}
}
