/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Point;
import hullwright.network.Backbone;
import hullwright.network.CableRun;
import java.util.ArrayList;
import java.util.List;

/**
 * A backbone with its stretches, place by place.
 */
final class Trunk {

	/** The number of its network, from 0. */
	final int network;
	final Backbone backbone;
	final List<Stay> stays = new ArrayList<>();
	/** The cables behind its last part, which a terminator should end. */
	final List<CableRun> trailing = new ArrayList<>();
	/** How the line runs from each stretch to the next. */
	final List<Crossing> crossings = new ArrayList<>();

	/** The way from one stretch to the next. */
	static final class Crossing {
		final Stay from;
		final Stay to;
		Stay.Side exit;
		Stay.Side entry;
		/** Between which columns it changes the deck, if it does: to the left of the column with this number. */
		int gap = -1;
		int track;
		List<Point> course = List.of();

		Crossing(Stay from, Stay to) {
			this.from = from;
			this.to = to;
		}

		/** Whether it goes to another deck over or under the same part of the boat. */
		boolean isStraightUp() {
			return changesDeck() && from.place.column == to.place.column;
		}

		boolean changesDeck() {
			return from.place.row != to.place.row;
		}
	}

	Trunk(int network, Backbone backbone) {
		this.network = network;
		this.backbone = backbone;
	}
}
