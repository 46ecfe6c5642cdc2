/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.network.Backbone;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A stretch of a backbone that stays in one place.
 */
final class Stay {

	/** The side of a place that a backbone comes in or goes out by. */
	enum Side {
		LEFT, RIGHT;

		Side opposite() {
			return this == LEFT ? RIGHT : LEFT;
		}
	}

	/** The number of its network, from 0. */
	final int network;
	final Backbone backbone;
	final DrawnPlace place;
	/** In the order of the backbone. */
	final List<Stop> stops = new ArrayList<>();
	/** Whether the backbone runs from left to right here. */
	boolean rightwards = true;

	Stay(int network, Backbone backbone, DrawnPlace place) {
		this.network = network;
		this.backbone = backbone;
		this.place = place;
	}

	/** Its stops from left to right. */
	List<Stop> leftToRight() {
		List<Stop> shown = new ArrayList<>(stops);
		if (!rightwards) {
			Collections.reverse(shown);
		}
		return shown;
	}

	Stop first() {
		return stops.get(0);
	}

	Stop last() {
		return stops.get(stops.size() - 1);
	}
}
