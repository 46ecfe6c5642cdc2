/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Extent;
import hullwright.network.layout.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A place with what is drawn in it. The layout fills in where.
 */
final class DrawnPlace {

	final String name;
	final String title;
	final Optional<Place> place;
	final int column;
	/** Its rank beside other places over the same part of the boat, from left to right; 0 as long as nothing says. */
	int order;
	/** The deck, from 0 for the lowest. */
	int row;
	/** The stretches of backbones that stay in it. */
	final List<Stay> stays = new ArrayList<>();
	/** The devices in it that hang on no part in it. */
	final CardStack visitors = new CardStack();
	double width;
	Extent extent = new Extent(0, 0, 0, 0);

	DrawnPlace(String name, String title, Optional<Place> place, int column, int row) {
		this.name = name;
		this.title = title;
		this.place = place;
		this.column = column;
		this.row = row;
	}

	/** What the place asks of parts, in words. */
	String zones() {
		List<String> words = new ArrayList<>();
		place.ifPresent(declared -> {
			declared.zones().stream().sorted().map(zone -> zone.name().toLowerCase(Locale.ROOT)).forEach(words::add);
			if (declared.nearCompass()) {
				words.add("near compass");
			}
		});
		return String.join(", ", words);
	}

	/** All stacks of cards in it. */
	List<CardStack> stacks() {
		List<CardStack> stacks = new ArrayList<>();
		stacks.add(visitors);
		stays.forEach(stay -> stay.stops.forEach(stop -> stacks.add(stop.cards)));
		return stacks;
	}
}
