/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.network.layout.Layout;
import hullwright.network.layout.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where the places of a boat stand in the drawing: columns bow to stern, rows deck above deck, what lies over a place in its column.
 */
final class PlaceGrid {

	/** The name under which things stand whose place the text does not state. */
	static final String UNSTATED = "";

	private final Map<String, DrawnPlace> places = new LinkedHashMap<>();
	private int columns;
	private int rows;

	private PlaceGrid() {
	}

	/**
	 * The grid of the places that something is at.
	 *
	 * @param used their names; {@link #UNSTATED} among them if something is nowhere
	 */
	static PlaceGrid of(Layout layout, Set<String> used) {
		Map<String, Place> declared = new LinkedHashMap<>();
		layout.places().forEach(place -> declared.put(place.name(), place));
		Map<String, List<Place>> columnOf = new LinkedHashMap<>();
		for (Place place : layout.places()) {
			columnOf.computeIfAbsent(below(place, declared).name(), none -> new ArrayList<>()).add(place);
		}
		PlaceGrid grid = new PlaceGrid();
		for (List<Place> column : columnOf.values()) {
			List<Place> occupied = column.stream().filter(place -> used.contains(place.name())).toList();
			occupied.forEach(place -> grid.add(place.name(), place.title().isEmpty() ? place.name() : place.title(), Optional.of(place),
					height(place, declared)));
			grid.columns += occupied.isEmpty() ? 0 : 1;
		}
		if (used.contains(UNSTATED)) {
			grid.add(UNSTATED, grid.places.isEmpty() ? "" : "Place not stated", Optional.empty(), 0);
			grid.columns++;
		}
		grid.closeRows();
		return grid;
	}

	private void add(String name, String title, Optional<Place> place, int height) {
		places.put(name, new DrawnPlace(name, title, place, columns, height));
	}

	/** A deck on which nothing is takes no room. */
	private void closeRows() {
		List<Integer> heights = new ArrayList<>(new TreeSet<>(places.values().stream().map(place -> place.row).toList()));
		places.values().forEach(place -> place.row = heights.indexOf(place.row));
		rows = heights.size();
	}

	/** The lowest place under this one. A circle, which is a mistake, ends where it began. */
	private static Place below(Place place, Map<String, Place> declared) {
		Set<String> seen = new HashSet<>();
		Place lowest = place;
		while (seen.add(lowest.name()) && lowest.above().map(declared::get).isPresent()) {
			lowest = declared.get(lowest.above().get());
		}
		return lowest;
	}

	private static int height(Place place, Map<String, Place> declared) {
		Set<String> seen = new HashSet<>();
		int height = 0;
		Place lower = place;
		while (seen.add(lower.name()) && lower.above().map(declared::get).isPresent()) {
			lower = declared.get(lower.above().get());
			height++;
		}
		return height;
	}

	/** The place with this name; where it is not drawn, any. */
	DrawnPlace of(String name) {
		return places.getOrDefault(name, places.values().iterator().next());
	}

	/** All places, column by column. */
	List<DrawnPlace> all() {
		return List.copyOf(places.values());
	}

	/** The places of a column on one deck. */
	List<DrawnPlace> at(int column, int row) {
		return places.values().stream().filter(place -> place.column == column && place.row == row)
				.sorted(Comparator.comparingInt(place -> place.order)).toList();
	}

	int columns() {
		return columns;
	}

	int rows() {
		return rows;
	}
}
